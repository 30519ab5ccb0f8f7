"""What the session shows in, a terminal screen or plain lines out."""
