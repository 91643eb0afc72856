"""The computation: pure functions on plain floats, the unit in every name.

No clock, no input or output, no chat, no language. `dose.work_out` is the main entry:
a `DoseRequest` in, numbers and codes out.
"""
