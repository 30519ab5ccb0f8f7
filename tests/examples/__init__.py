"""Patterns of our own invention with an editor's counts; every folder's file is a case."""
