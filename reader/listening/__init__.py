"""Sound frames in, utterances with a start, an end and words out; pure, no microphone."""
