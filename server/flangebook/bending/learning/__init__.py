"""What test bends and first pieces teach, and how the figures follow.

    result            what was set and what came, with the set-up it was made in
    readings         what a result's measurements amount to: springback, deduction, K-factor, ...
    plausible        results that cannot be, or that deserve a second look
    lessons          a result beside what was expected of it
    nearness        how much alike two bends are: thickness, V opening, angle, lot
    joint           all results solved together: metal and press apart, a misreading hardly counts
    belief          one figure: what the results make of it, the odd ones
    learned          a predicted bend with all that was learned put in
    at_the_press     the next setting after a measured piece, and the ram's tilt

Nothing is kept here. The figures are worked out afresh from the expectation and the results
each time, so a result that is marked wrong leaves no trace.
"""

from __future__ import annotations
