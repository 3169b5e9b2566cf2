// An SVG answer as a picture: inside <img> it can neither run scripts nor fetch anything.

import { buttons, save } from "/docs/saving.js";

const SCALE = 2; // pixels of the PNG for one of the picture
const MOST_PIXELS = 16_000 * 8_000; // that every browser's canvas has
const LONGEST_SIDE = 16_000;

export const PictureAnswer = (React) => {
  const h = React.createElement;
  return ({ content, type, name }) => {
    const picture = React.useRef(null);
    const saveSvg = () => save(new Blob([content], { type }), `${name}.svg`);
    const savePng = async () => save(await asPng(picture.current), `${name}.png`);
    return h(
      "div",
      { className: "answer" },
      buttons(h, { "Save SVG": saveSvg, "Save PNG": savePng }),
      h("img", {
        alt: inWords(content),
        className: "picture-answer",
        ref: picture,
        src: `data:${type};charset=utf-8,${encodeURIComponent(content)}`,
      }),
    );
  };
};

// The picture's own title and description.
function inWords(content) {
  const svg = new DOMParser().parseFromString(content, "image/svg+xml").documentElement;
  const words = ["title", "desc"].map((name) => svg.querySelector(`:scope > ${name}`)?.textContent.trim());
  return words.filter(Boolean).join(". ");
}

async function asPng(picture) {
  await picture.decode();
  const { naturalWidth: width, naturalHeight: height } = picture;
  const scale = Math.min(SCALE, Math.sqrt(MOST_PIXELS / (width * height)), LONGEST_SIDE / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const drawn = canvas.getContext("2d");
  drawn.fillStyle = "white";
  drawn.fillRect(0, 0, canvas.width, canvas.height);
  drawn.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve, "image/png"));
}
