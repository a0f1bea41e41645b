"""The part in the press: gauge, motion, hands, weight."""
