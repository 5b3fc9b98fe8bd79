import { readGtin } from "@/lib/quantity/gtin.ts";

/** What a detector of bar codes can do, ours or the browser's own. */
type Detector = { detect: (video: HTMLVideoElement) => Promise<{ rawValue: string }[]> };
type DetectorClass = {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats: () => Promise<readonly string[]>;
};

/** The codes that trade items carry. */
const formats = ["ean_13", "ean_8", "upc_a", "upc_e", "itf"];
const betweenLooks = 200;

/** The browser's own detector where it knows these codes, else one of ours, fetched from this registry and from nowhere else. */
async function detectorHere(): Promise<Detector> {
  const own = (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;
  if (own && (await own.getSupportedFormats().catch((): readonly string[] => [])).includes("ean_13"))
    return new own({ formats });
  const { BarcodeDetector, prepareZXingModule } = await import("barcode-detector/ponyfill");
  const address = new URL("../../../node_modules/zxing-wasm/dist/reader/zxing_reader.wasm", import.meta.url).href;
  prepareZXingModule({ overrides: { locateFile: () => address } });
  return new BarcodeDetector({ formats: formats as never }) as Detector;
}

/**
 * Shows the camera in `video` and looks until a product code whose check digit fits is seen (a misread one does not), or until
 * stopped. Rejects as `getUserMedia` does where there is no camera or no leave to use it.
 */
export async function scanCode(video: HTMLVideoElement, stop: AbortSignal): Promise<string | null> {
  const stream = await navigator.mediaDevices.getUserMedia({
    video: { facingMode: { ideal: "environment" }, width: { ideal: 1280 } },
    audio: false,
  });
  try {
    video.srcObject = stream;
    const [detector] = await Promise.all([detectorHere(), video.play()]);
    while (!stop.aborted) {
      const seen = await detector.detect(video);
      const code = seen.map(({ rawValue }) => rawValue).find((text) => readGtin(text).state === "ok");
      if (code !== undefined) return code;
      await new Promise((resolve) => setTimeout(resolve, betweenLooks));
    }
    return null;
  } finally {
    video.srcObject = null;
    for (const track of stream.getTracks()) track.stop();
  }
}
