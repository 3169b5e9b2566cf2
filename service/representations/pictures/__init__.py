"""Pictures of pullovers and charts, as SVG."""
