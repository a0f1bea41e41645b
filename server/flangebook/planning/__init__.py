"""Planning: a part and a shop in, a set-up out. The only place that knows both."""
