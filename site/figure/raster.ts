import { h } from "../dom";

/** Dots for each CSS pixel: sharp on screens of today, and 192 dots to the inch on paper. */
const dots = 2;

/**
 * A standalone drawing as a picture of dots.
 *
 * @param drawing text of an SVG file with width and height
 * @throws Error if the browser cannot draw or write it
 */
export async function raster(drawing: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([drawing], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = h("canvas", { width: image.naturalWidth * dots, height: image.naturalHeight * dots });
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise<Blob>((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("the browser wrote no picture"))), "image/png");
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
