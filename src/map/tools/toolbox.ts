import type { Tool } from '../../state/view.svelte';
import type { MapPointer, Taken } from '../map-surface';
import type { Desk, Key, MapTool } from './desk';
import { DrawTool } from './draw-tool';
import { SelectTool } from './select-tool';

/** Hands pointer and keys to the tool in hand. */
export class Toolbox implements MapTool {
  readonly #desk: Desk;
  readonly #select: SelectTool;
  #tool: MapTool;
  #inHand: Tool = 'select';

  constructor(desk: Desk) {
    this.#desk = desk;
    this.#select = new SelectTool(desk);
    this.#tool = this.#select;
  }

  /** Another tool is in hand: what the old one had begun is given up. */
  take(tool: Tool): void {
    if (tool === this.#inHand) return;
    this.#tool.cancel();
    this.#inHand = tool;
    const { surface, hand } = this.#desk;
    hand.drawing = [];
    this.#tool = tool === 'select' ? this.#select : new DrawTool(this.#desk, tool);
    surface.setDoubleClickZoom(tool === 'select');
    surface.setCursor(tool === 'select' ? 'default' : 'crosshair');
  }

  down(pointer: MapPointer): Taken {
    return this.#tool.down(pointer);
  }
  held(pointer: MapPointer): void {
    this.#tool.held(pointer);
  }
  /** A feature goes with the pointer from now on, wherever the pointer took hold of its handle. */
  grab(id: string, pointer: MapPointer): void {
    if (this.#tool === this.#select) this.#select.grab(id, pointer);
  }
  move(pointer: MapPointer): void {
    this.#tool.move(pointer);
  }
  up(pointer: MapPointer): void {
    this.#tool.up(pointer);
  }
  cancel(): void {
    this.#tool.cancel();
  }
  tap(pointer: MapPointer): void {
    this.#tool.tap(pointer);
  }
  hover(pointer: MapPointer | null): void {
    this.#tool.hover(pointer);
  }
  key(key: Key): boolean {
    return this.#tool.key(key);
  }
  camera(): void {
    this.#tool.camera();
  }
}
