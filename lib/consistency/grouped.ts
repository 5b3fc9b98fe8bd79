/**
 * Items by label, labels in the order they first appear.
 *
 * @example [...grouped([1, 2, 3], (n) => n % 2)] // [[1, [1, 3]], [0, [2]]]
 */
export function grouped<T, Label>(items: readonly T[], label: (item: T) => Label): Map<Label, T[]> {
  const groups = new Map<Label, T[]>();
  for (const item of items) {
    const group = groups.get(label(item));
    if (group) group.push(item);
    else groups.set(label(item), [item]);
  }
  return groups;
}
