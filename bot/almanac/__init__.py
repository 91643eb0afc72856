"""Reference data, a source beside every figure: genera, ions."""
