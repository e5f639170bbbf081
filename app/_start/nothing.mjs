// Stands in for the marker package "server-only", which exists inside the web framework alone.
