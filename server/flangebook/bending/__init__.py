"""Pure bending: metals, gauges, force, air bend, blank, gauging, handling.

Plain floats in mm, N, MPa, kg and degrees; no web, no storage, no JSON.
Angles named ``included_angle_deg`` are between the two flats (180 is flat);
``bend_angle_deg`` is ``180 - included_angle_deg``.
"""
