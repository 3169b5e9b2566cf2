"""The whole garment in every size: what is asked, its defaults, and the stages from one to the other."""
