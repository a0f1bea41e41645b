"""Labels: card codes, QR codes, labels for the bin, and sheets of them."""
