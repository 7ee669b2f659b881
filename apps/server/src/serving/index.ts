export { PortTaken, type Served, type ServeInput, serve } from "./serve.ts";
