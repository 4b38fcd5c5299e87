package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/**
 * What comes after hanging of one leaf, on any post and in any footing: {@link Sags#afterHanging} for a search that tries one leaf on hundreds of posts. The leaf is
 * solved once for each state of its rods, on a post that stands still; a post and its footing then cost a few equations. Rods pull or go slack as
 * {@link TautGate} has it.
 */
public final class LeafDrops {
    private final HungGate gate;
    private final Force person;
    private final LifeJudgement life;
    private final List<String> rods;
    private final double pretensionLb;
    private final Map<List<String>, PinnedLeaf> states = new LinkedHashMap<>();

    private LeafDrops(HungGate gate, Force person, LifeJudgement life) {
        this.gate = gate;
        this.person = person;
        this.life = life;
        this.rods = gate.leaf().of(MemberRole.ROD).stream()
                .map(plumbleaf.engine.gate.Member::id)
                .toList();
        this.pretensionLb = TautGate.pretensionLb(gate);
    }

    /** @param gate whose leaf and hinges count; post and footing come later */
    public static LeafDrops of(HungGate gate, Force person, LifeJudgement life) {
        return new LeafDrops(gate, person, life);
    }

    /** What it hangs on. */
    public HingeModel hinge() {
        return gate.hinge();
    }

    /** What comes after hanging on a post in a foot that is no wall. */
    public AfterHanging on(PostGive post, BaseSpring foot) {
        return on(post.in(foot));
    }

    public AfterHanging on(PostGive.Standing post) {
        double[][] give = post.give();
        double[] shortened = shortened(give);
        double[] dead = mix(1, 0, 0);
        List<String> slack = slackUnder(give, dead, shortened);
        for (String rod : slack) dead[PinnedLeaf.FIRST_ROD + rods.indexOf(rod)] = -pretensionLb;
        PinnedLeaf hung = state(slack);
        double[] underDead = hung.on(give, dead).forces;
        double[] underPound = hung.on(give, mix(0, 0, 1)).forces;
        double footingIn = post.footShare(underDead, underPound);
        PinnedLeaf withPerson = state(slackUnder(give, mix(1, 1, 0), shortened));
        double personIn = withPerson.on(give, mix(0, 1, 0)).dropIn();
        double creepIn = post.creepIn(underDead, underPound);
        return Sags.after(gate, Offset.inches(footingIn), creepIn, personIn, life);
    }

    /**
     * What each hinge of the closed leaf does to its post under shares of its own weight and of a person: {@link GateForces} for those two loads alone.
     *
     * @param foot of likely soil, as forces are found in it
     */
    public List<HingeForce> hinges(PostGive post, BaseSpring foot, double dead, double live) {
        double[][] give = post.on(foot);
        double[] shortened = shortened(give);
        double[] loads = mix(dead, live, 0);
        List<String> slack = slackUnder(give, loads, shortened);
        for (int r = 0; r < rods.size(); r++)
            if (!slack.contains(rods.get(r))) loads[PinnedLeaf.FIRST_ROD + r] = shortened[r];
        double[] forces = state(slack).on(give, loads).forces;
        List<HingeForce> hinges = new ArrayList<>();
        for (int i = 0; i < gate.leaf().pins().size(); i++) {
            HingePin pin = gate.leaf().pins().get(i);
            hinges.add(new HingeForce(
                    pin.id(),
                    pin.z(),
                    Force.pounds(forces[3 * i]),
                    Force.pounds(forces[3 * i + 1]),
                    Force.pounds(-forces[3 * i + 2])));
        }
        return hinges;
    }

    private PinnedLeaf state(List<String> slack) {
        return states.computeIfAbsent(slack, out -> PinnedLeaf.of(gate, person.pounds(), rods, out));
    }

    private double[] mix(double dead, double hanging, double pound) {
        double[] mix = new double[PinnedLeaf.FIRST_ROD + rods.size()];
        mix[PinnedLeaf.DEAD] = dead;
        mix[PinnedLeaf.PERSON] = hanging;
        mix[PinnedLeaf.CORNER] = pound;
        return mix;
    }

    /** What each rod is shortened by, as the pull it would have between corners that do not give; {@code P = Q + N Q}. */
    private double[] shortened(double[][] give) {
        int n = rods.size();
        if (n == 0) return new double[0];
        double[][] m = new double[n][n];
        double[] right = new double[n];
        for (int j = 0; j < n; j++) {
            double[] pair = mix(0, 0, 0);
            pair[PinnedLeaf.FIRST_ROD + j] = 1;
            PinnedLeaf.On drawn = state(List.of()).on(give, pair);
            for (int i = 0; i < n; i++) m[i][j] = drawn.barLb(i) + (i == j ? 1 : 0);
            right[j] = pretensionLb;
        }
        return Elimination.solve(m, right);
    }

    private List<String> slackUnder(double[][] give, double[] loads, double[] shortened) {
        List<String> slack = new ArrayList<>();
        while (slack.size() < rods.size()) {
            double[] tightened = loads.clone();
            for (int r = 0; r < rods.size(); r++)
                if (!slack.contains(rods.get(r))) tightened[PinnedLeaf.FIRST_ROD + r] += shortened[r];
            PinnedLeaf.On on = state(List.copyOf(slack)).on(give, tightened);
            int least = -1;
            double most = 0;
            for (int r = 0; r < rods.size(); r++) {
                if (slack.contains(rods.get(r))) continue;
                double pull = on.barLb(r) + shortened[r];
                if (pull < most) {
                    most = pull;
                    least = r;
                }
            }
            if (least < 0) return List.copyOf(slack);
            slack.add(rods.get(least));
        }
        return List.copyOf(slack);
    }
}
