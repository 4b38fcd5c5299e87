package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.line.Terminals;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * What a run of chain link takes. Fabric is woven on from roll to roll and swaged rail is pushed on from length to length, so both are counted by the whole foot
 * of the job and not cut as bars are. Counts of ties, bands and rings: common practice, no source. Check: ChainLinkCheck.
 */
public final class FabricNeeds {
    /** Ties of fabric to a post, and bands to a terminal: one a foot of height. */
    private static final double TIE_UP_IN = 12;

    /** Ties of fabric to a rail, and rings to a wire. */
    private static final double TIE_ALONG_IN = 24;

    /** From this height up, ends are braced with a rail at mid-height and a truss rod. */
    private static final Length BRACED = Length.inches(66);

    private final Assembly.WovenRun woven;
    private final RunLayout run;
    private final FenceInfill.Fabric fabric;
    private final Length height;
    private final Optional<Section> rail;
    private final boolean bottomWire;
    private final Terminals terminals;
    private final List<Need> loose = new ArrayList<>();

    private FabricNeeds(Assembly.WovenRun woven) {
        this.woven = woven;
        this.run = woven.run();
        this.fabric = woven.fabric();
        this.height = woven.height();
        this.rail = woven.rail();
        this.bottomWire = woven.bottomWire();
        this.terminals = Terminals.of(run);
    }

    public static Needs of(Assembly.WovenRun woven) {
        FabricNeeds needs = new FabricNeeds(woven);
        for (Bay bay : needs.run.bays()) needs.bay(bay);
        for (Post post : needs.run.posts()) needs.post(post);
        return new Needs(needs.loose, List.of());
    }

    /** Posts whose cap lets the top rail through, or carries barbed wire: they take no plain one. */
    static List<String> ownCaps(RunLayout run, FenceInfill.Fabric fabric, Optional<Section> rail) {
        Terminals terminals = Terminals.of(run);
        List<String> own = new ArrayList<>();
        for (Post post : run.posts()) {
            boolean through = rail.isPresent() && terminals.at(post.id()).isEmpty();
            if (through || fabric.barbed() > 0) own.add(post.id());
        }
        return own;
    }

    private void bay(Bay bay) {
        double feet = bay.slopeLength().inFeet();
        add(fabricItem(), "chain-link fabric", NetUnit.FEET, feet, bay.id());
        int rails = bay.rails().size();
        int along = (int) Math.ceil(bay.slopeLength().inches() / TIE_ALONG_IN - 1e-9);
        rail.ifPresent(section -> {
            add("SWAGED-" + section.id(), "swaged rail, " + section.name(), NetUnit.FEET, feet * rails, bay.id());
            pieces("fabric-tie", "fabric tie", along * rails, bay.id());
        });
        if (bottomWire) {
            add("tension-wire", "tension wire", NetUnit.FEET, feet, bay.id());
            pieces("hog-ring", "hog ring", along, bay.id());
        }
        if (fabric.slats() > 0)
            add("slats", "slats for chain link", NetUnit.SQUARE_FEET, feet * height.inFeet(), bay.id());
        if (fabric.barbed() > 0) add("barbed-wire", "barbed wire", NetUnit.FEET, feet * fabric.barbed(), bay.id());
    }

    private void post(Post post) {
        Optional<Terminals.Terminal> terminal = terminals.at(post.id());
        int up = (int) Math.ceil(height.inches() / TIE_UP_IN - 1e-9);
        String od = od(post);
        if (terminal.isPresent()) terminal(post, terminal.get(), up);
        else pieces("fabric-tie", "fabric tie", up, post.id());
        if (fabric.barbed() > 0) pieces("barb-arm-" + od, "barbed-wire arm for " + od + " in. post", 1, post.id());
        else if (rail.isPresent() && terminal.isEmpty())
            pieces("loop-cap-" + od + "x" + size(rail.get().depth()), "loop cap for " + od + " in. post", 1, post.id());
    }

    /** For each piece of fabric that ends here: a bar through it, bands round the post, and for each rail a band and an end. */
    private void terminal(Post post, Terminals.Terminal terminal, int up) {
        String od = od(post);
        int sides = sides(post, terminal);
        int rails = rail.isPresent() && !run.bays().isEmpty()
                ? run.bays().get(0).rails().size()
                : 0;
        boolean braced = rail.isPresent() && height.compareTo(BRACED) >= 0;
        int braceBands = rails + (bottomWire ? 1 : 0) + (braced ? 1 : 0);
        pieces("tension-bar-" + inches(), "tension bar, " + inches() + " in.", sides, post.id());
        pieces("tension-band-" + od, "tension band for " + od + " in. post", sides * up, post.id());
        pieces("brace-band-" + od, "brace band for " + od + " in. post", sides * braceBands, post.id());
        pieces("band-bolt", "carriage bolt, 5/16 x 1-1/4", sides * (up + braceBands), post.id());
        rail.ifPresent(section -> {
            String end = size(section.depth());
            pieces(
                    "rail-end-" + end,
                    "rail end for " + end + " in. rail",
                    sides * (rails + (braced ? 2 : 0)),
                    post.id());
            if (!braced) return;
            pieces("truss-rod", "truss rod with tightener", sides, post.id());
            pieces("brace-band-" + od, "brace band for " + od + " in. post", sides, post.id());
            add("SWAGED-" + section.id(), "brace rail, " + section.name(), NetUnit.FEET, braceFeet(post), post.id());
        });
    }

    /** Fabric ends only where there is a bay: a post between two gates has none. */
    private int sides(Post post, Terminals.Terminal terminal) {
        int bays = 0;
        for (Bay bay : run.bays()) {
            if (bay.from().equals(post.id()) || bay.to().equals(post.id())) bays++;
        }
        return Math.min(terminal.sides(), bays);
    }

    private double braceFeet(Post post) {
        double feet = 0;
        for (Bay bay : run.bays()) {
            if (bay.from().equals(post.id()) || bay.to().equals(post.id()))
                feet += bay.slopeLength().inFeet();
        }
        return feet;
    }

    private String od(Post post) {
        if (post.role() == PostRole.GATE || post.role() == PostRole.ROLLER) return size(post.width());
        return size((terminals.at(post.id()).isPresent() ? woven.terminal() : woven.line()).depth());
    }

    private String fabricItem() {
        return "fabric-" + inches() + "-" + DecimalText.upTo(fabric.wire().inches(), 3) + "x"
                + DecimalText.upTo(fabric.mesh().inches(), 3);
    }

    private String inches() {
        return DecimalText.upTo(height.inches(), 2);
    }

    private static String size(Length length) {
        return DecimalText.upTo(length.inches(), 4);
    }

    private void pieces(String item, String name, int count, String cause) {
        if (count > 0) loose.add(Need.pieces(item, name, PartGroup.HARDWARE, count, cause));
    }

    private void add(String item, String name, NetUnit unit, double quantity, String cause) {
        loose.add(new Need(item, name, PartGroup.FENCE, unit, quantity, cause));
    }
}
