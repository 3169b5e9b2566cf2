"use strict";

// Swagger UI is dark where <html> has this class; run before anything is drawn, so that nothing flashes.
const dark = matchMedia("(prefers-color-scheme: dark)");
const follow = () => document.documentElement.classList.toggle("dark-mode", dark.matches);
dark.addEventListener("change", follow);
follow();
