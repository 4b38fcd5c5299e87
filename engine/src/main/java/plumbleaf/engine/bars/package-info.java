/**
 * What a cut plan is asked in and answered in: pieces, bars, the rules of the saw, and the plan with its proof. Lengths are whole nanometres, so that "does it
 * fit" has one answer. Knows nothing of fences and nothing of how a plan is found. Read {@link plumbleaf.engine.bars.CutTask},
 * {@link plumbleaf.engine.bars.CutPlanner}, {@link plumbleaf.engine.bars.CutPlan}.
 */
@NullMarked
package plumbleaf.engine.bars;

import org.jspecify.annotations.NullMarked;
