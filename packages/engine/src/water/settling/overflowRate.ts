/**
 * How fast would the water of a settling tank rise, if it flowed evenly over its plan? What sinks faster settles.
 *
 * @param flow_m3_per_s - flow through the tank [m3/s], 0 or more
 * @param planArea_m2 - plan area of the tank [m2], above 0
 * @returns overflow rate [m/s]
 * @source hazen-1904, flow over area (from memory)
 * @example
 * overflowRate_m_per_s(0.002, 4) // → 0.0005
 */
export function overflowRate_m_per_s(flow_m3_per_s: number, planArea_m2: number): number {
  return flow_m3_per_s / planArea_m2;
}
