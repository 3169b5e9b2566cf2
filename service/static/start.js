"use strict";

SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#contract",
  deepLinking: true,
  defaultModelsExpandDepth: 0,
  displayRequestDuration: true,
  filter: true,
  plugins: [PictureAnswers],
  validatorUrl: null,
});
