"use strict";

// Shows an SVG answer as a picture: inside <img> it can neither run scripts nor fetch anything.
const PictureAnswers = ({ React }) => ({
  wrapComponents: {
    responseBody: (Original) => (props) =>
      /^image\/svg\+xml/.test(props.contentType || "") && typeof props.content === "string"
        ? React.createElement("img", {
            alt: "The picture that was answered",
            className: "picture-answer",
            src: "data:image/svg+xml;charset=utf-8," + encodeURIComponent(props.content),
            style: { background: "white", maxWidth: "100%" },
          })
        : React.createElement(Original, props),
  },
});
