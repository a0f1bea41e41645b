"""From a part or a bend to a set-up on this press with this crib.

The only place that knows both bending and the shop's things. Pure: dataclasses of ``bending``
in, JSON-ready dicts out; no web, no storage. A plan is the dataclass ``planned.Plan`` until
``answers.plan_json`` makes the JSON of it; two of them make a box's (``box.merge``).

    one_bend      one bend: tools, loads, every other die with the reason for its rank
    stroke        one bend over its stroke: force and angles against depth
    plan          a part: blank, steps, tools to fetch, findings
    chart         the wall chart's numbers
    next_setting  what to set after a measured angle
    differences   a saved plan against a fresh one, in words
"""
