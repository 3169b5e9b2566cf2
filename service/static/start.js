import { Address, takeFromAddress } from "/docs/address.js";
import { Answers } from "/docs/answers.js";
import { Folds } from "/docs/folds.js";
import { Names } from "/docs/names.js";

// Before Swagger UI reads it.
const asked = takeFromAddress();

SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#contract",
  deepLinking: true,
  defaultModelExpandDepth: 2,
  defaultModelsExpandDepth: 0,
  displayRequestDuration: true,
  filter: true,
  plugins: [Address(asked), Answers, Folds, Names],
  syntaxHighlight: { activated: true, theme: "obsidian" },
  tryItOutEnabled: true,
  validatorUrl: null,
});
