"""How the English listening model is made: data, training, export, figures."""
