"""A physical model of the air bend: an elastic-plastic sheet between punch and die shoulders.

    module                    what it answers
    ------------------------  ------------------------------------------------------------------
    moment_curvature          sheet_law(...): how a sheet resists; moment, energy, release
    hardening_from_strength   K and n from Y, R_m and elongation; law_of(metal, t)
    tools                     tools(...): die, punch, friction; what the model takes
    closure                   the sheet's line under load, closed on the tools
    pressed                   what the line says: force, depth, springback, radii, energy
    inner_face                depth and radius at the inner face, fitted to finite elements
    stroke                    stroke(...) over all angles; set_bend(...) for a wanted angle
    bands                     banded_bend(...): the same with bands and what each cause adds
    roots                     roots of many equations at once

All per millimetre of bend length, plane strain, lengths in mm, stresses in MPa, angles in
degrees outside and radians inside; included angles, 180 is flat. One bend takes some 4 ms, with
bands some 15 ms; many sheets and angles can be solved as rows of one.

>>> from flangebook.bending.sheet_model.moment_curvature import sheet_law
>>> from flangebook.bending.sheet_model.stroke import set_bend
>>> from flangebook.bending.sheet_model.tools import tools
>>> steel = sheet_law(207_000, 200, 530, 0.22, thickness_mm=2.0)  # E, Y, K, n
>>> bend = set_bend(steel, tools(16, 86, 2.4, 1.0), released_angle_deg=90)
>>> round(bend.springback_deg, 1), round(bend.peak_force_n_per_mm)
(1.7, 99)
"""
