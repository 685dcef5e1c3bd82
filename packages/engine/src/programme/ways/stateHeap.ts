/** States in the order of their hours; a state may stand in it more than once. */
export class StateHeap {
  private keys = new Float64Array(64);
  private states = new Int32Array(64);
  private size = 0;

  get length(): number {
    return this.size;
  }

  push(key: number, state: number): void {
    if (this.size === this.keys.length) this.grow();
    const { keys, states } = this;
    let at = this.size++;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (keys[up]! <= key) break;
      keys[at] = keys[up]!;
      states[at] = states[up]!;
      at = up;
    }
    keys[at] = key;
    states[at] = state;
  }

  /** The state of the fewest hours; it must not be empty. */
  pop(): number {
    const { keys, states } = this;
    const first = states[0]!;
    const size = --this.size;
    const key = keys[size]!;
    const state = states[size]!;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= size) break;
      if (down + 1 < size && keys[down + 1]! < keys[down]!) down++;
      if (keys[down]! >= key) break;
      keys[at] = keys[down]!;
      states[at] = states[down]!;
      at = down;
    }
    keys[at] = key;
    states[at] = state;
    return first;
  }

  private grow(): void {
    const keys = new Float64Array(2 * this.keys.length);
    const states = new Int32Array(2 * this.states.length);
    keys.set(this.keys);
    states.set(this.states);
    this.keys = keys;
    this.states = states;
  }
}
