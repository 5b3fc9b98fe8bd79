import { sendDrawing } from "../../_amount/send-drawing.ts";

/** The drawings as a picture that can be made larger without loss. */
export const GET = (request: Request): Promise<Response> =>
  sendDrawing(request, { type: "image/svg+xml; charset=utf-8", name: "amount.svg", make: (svg) => svg });
