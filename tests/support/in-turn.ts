import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Slow pages first, so that none of them is left over at the end. */
const turns = ['browser', 'apart', 'unit'];

/**
 * Files of one project after another. Ordered by their length alone they alternate, and a worker that is handed a file of
 * another project makes way for a new one, which reads all modules and starts a browser again.
 */
export default class InTurn extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const turn = ({ project }: TestSpecification) => turns.indexOf(project.name);
    return (await super.sort(files)).sort((one, other) => turn(one) - turn(other));
  }
}
