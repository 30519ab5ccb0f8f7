"""Steps, states and sayings in, spoken sentences and shown lines out."""
