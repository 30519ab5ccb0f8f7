"""The conversation: a pure state machine, events in, effects out."""
