"""The parts of a garment beside the yoke; none knows another."""
