package plumbleaf.benchmarks;

import java.util.List;

/** What a sampling profiler shows to take the time where a goal is not met. Words, not measurements: looked at again whenever the engine's ways change. */
final class Bounds {
    static final List<String> ROWS = List.of(
            "By a sampling profiler, over the walk of edits above and over the open gate above:\n",
            "- A redesign keeps the ground, the lines, the layout, each gate, the cut plans and the orders whose inputs are equal; what is left is what the edit touches.",
            "  An edit of words or money alone takes a few milliseconds: the order and the price are summed anew. Most shots and stations of this yard lie under its one"
                    + " gate, and a gate that is touched is hung anew: about two fifths of the time goes into it, of that half into the movements and forces of its frame"
                    + " and a sixth into the gusts its links stand.",
            "- About two fifths goes into the prices of its remedies: each is a yard laid out, drawn without being hung, ordered and priced. Ground shaved under the swing"
                    + " is the dearest of them, since its depth depends on how far the leaf drops.",
            "- A choice spends about a sixth of its time on the cheapest build that passes and the failing check of each cheaper one. More than half goes into what less"
                    + " drop would cost: every leaf is hung once on every pair of posts in the widest and deepest hole, to leave out what can never come so near.",
            "- Ten miles are some 6,700 posts and a hundred gates: a third of the time hangs the gates, a quarter orders and prices (of that most cuts rails and pickets from"
                    + " stock), a fifth tells each post the wind that its own stretch stands in, a tenth lays the fence out. It grows no faster than the length.",
            "- A verb that starts cold spends a quarter of its time on starting Java and finding its words. The rest is the design itself before it is compiled: some 4,000 classes"
                    + " come from the shared archive, 1,600 lambdas are tied at their first use, and 3,900 methods are compiled while it runs. Compiling sooner, later or less"
                    + " was tried and gained nothing.",
            "- The workspace's first page waits for its framework to find and tie its parts: 14,700 classes, shared from an archive too. Making the parts only when they are"
                    + " asked for was tried and gained nothing, since the first page asks for most of them.");

    private Bounds() {}
}
