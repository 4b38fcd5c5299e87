package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Entry;

/** What can be written down in a job one by one: hours, bills, options, no-dig stretches, lot lines, shots. */
enum Ledger {
    HOURS(
            "actuals",
            "Hours on a task",
            "Write hours down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("task", "Task", Blank.Kind.PICKED),
            blank("quantity", "Done", Blank.Kind.NUMBER),
            blank("hours", "Hours of one person", Blank.Kind.NUMBER),
            blank("note", "Note", Blank.Kind.WORDS)),
    USED(
            "used",
            "Material used",
            "Write material down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("item", "Item", Blank.Kind.PICKED),
            blank("units", "Units used", Blank.Kind.NUMBER),
            blank("returned", "Of these returned", Blank.Kind.NUMBER)),
    BILL(
            "money.billing.bills",
            "A bill that went out",
            "Write bill down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("what", "For", Blank.Kind.WORDS),
            blank("amount", "Amount", Blank.Kind.MONEY)),
    PAID(
            "money.billing.paid",
            "Money that came in",
            "Write payment down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("how", "How", Blank.Kind.WORDS),
            blank("amount", "Amount", Blank.Kind.MONEY)),
    MEASURED(
            "money.billing.measured",
            "A line of the schedule of values",
            "Add line",
            "",
            blank("what", "Work", Blank.Kind.WORDS),
            blank("unit", "Counted in", Blank.Kind.WORDS),
            blank("quantity", "In the contract", Blank.Kind.NUMBER),
            blank("each", "Worth each, with tax", Blank.Kind.MONEY),
            blank("installed", "Installed", Blank.Kind.NUMBER),
            blank("stored", "Stored, not built in", Blank.Kind.NUMBER)),
    SUBMITTAL(
            "money.billing.submittals",
            "A sample, data sheet or drawing to hand in",
            "Add submittal",
            "",
            blank("what", "What", Blank.Kind.WORDS),
            blank("sent", "Sent on", Blank.Kind.DATE),
            blank("back", "Back on", Blank.Kind.DATE)),
    NOTICE(
            "money.billing.notices",
            "A notice that has to go out: preliminary, lien",
            "Add notice",
            "",
            blank("what", "What it is called", Blank.Kind.WORDS),
            blank("days", "Days, as you were told", Blank.Kind.NUMBER),
            blank("from", "Counted from", Blank.Kind.PICKED),
            blank("sent", "Sent on", Blank.Kind.DATE)),
    CHANGE(
            "changes",
            "A change after acceptance",
            "Write change down",
            "C",
            blank("date", "Day", Blank.Kind.DATE),
            blank("what", "What changes", Blank.Kind.WORDS),
            blank("price", "Adds to the price, with tax", Blank.Kind.MONEY),
            blank("days", "Adds days", Blank.Kind.NUMBER)),
    CALL(
            "warranty",
            "A call under warranty",
            "Write call down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("what", "What was the matter", Blank.Kind.WORDS),
            blank("cause", "Cause", Blank.Kind.PICKED),
            blank("hours", "Hours of one person", Blank.Kind.NUMBER),
            blank("cost", "Bought for it", Blank.Kind.MONEY)),
    MOISTURE(
            "moisture",
            "A moisture reading",
            "Write reading down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("where", "Where", Blank.Kind.WORDS),
            blank("moisture", "Moisture", Blank.Kind.SHARE)),
    OPTION(
            "money.options",
            "An option for the customer",
            "Add option",
            "O",
            blank("name", "What it is", Blank.Kind.WORDS),
            blank("kind", "Kind", Blank.Kind.PICKED),
            blank("edits", "Changes to the job", Blank.Kind.EDITS)),
    ALLOWANCE(
            "money.allowances",
            "An allowance in the price",
            "Add allowance",
            "",
            blank("charge", "For", Blank.Kind.PICKED),
            blank("count", "How many", Blank.Kind.NUMBER),
            blank("why", "Why so many", Blank.Kind.WORDS)),
    PART(
            "parts",
            "Parts from a maker's sheet",
            "Add parts",
            "",
            blank("file", "Which sheet", Blank.Kind.WORDS),
            blank("rows", "Table, headings first", Blank.Kind.ROWS)),
    OWN_HINGE(
            "hinge",
            "A hinge from its maker's sheet",
            "Add hinge",
            blank("capacity_pair_lb", "A pair carries, lb (empty: unknown, never a pass)", Blank.Kind.WORDS),
            blank("capacity_width_in", "On a leaf so wide", Blank.Kind.INCHES),
            blank("capacity_spacing_in", "With pins so far apart", Blank.Kind.INCHES),
            blank("pin_offset_in", "Pin from the post's face along the run", Blank.Kind.INCHES),
            blank("pin_swing_side_in", "Pin from the leaf's middle to the swing side", Blank.Kind.INCHES),
            blank("opens_deg", "Turns, in degrees", Blank.Kind.WORDS),
            blank("adjusts_in", "Adjusts", Blank.Kind.INCHES),
            blank("rise_per_degree_in", "Rises for each degree it turns", Blank.Kind.INCHES),
            blank("grip_least_in", "Takes a frame from", Blank.Kind.INCHES),
            blank("grip_most_in", "To", Blank.Kind.INCHES)),
    OWN_LATCH(
            "latch",
            "A latch from its maker's sheet",
            "Add latch",
            blank("tolerance_in", "Latches so far off in height", Blank.Kind.INCHES),
            blank("bite_in", "Bar reaches into its keeper", Blank.Kind.INCHES),
            blank("play_in", "Bar loose in its keeper, across", Blank.Kind.INCHES),
            blank("holds_lb", "Stands a push of, lb (empty: unknown, never a pass)", Blank.Kind.WORDS),
            blank("least_gap_in", "Gap at least", Blank.Kind.INCHES),
            blank("greatest_gap_in", "Gap at most", Blank.Kind.INCHES)),
    OWN_ROD(
            "rod",
            "A drop rod from its maker's sheet",
            "Add drop rod",
            blank("diameter_in", "Bar", Blank.Kind.INCHES),
            blank("yield_psi", "Yield, psi", Blank.Kind.WORDS),
            blank("guide_play_in", "Loose in its guides, both sides together", Blank.Kind.INCHES),
            blank("sleeve_in", "Ground sleeve, inside", Blank.Kind.INCHES),
            blank("weight_lb", "Weighs, lb", Blank.Kind.WORDS)),
    OWN_ROLLER(
            "roller",
            "Rollers of a slide gate from their maker's sheet, the set on one post",
            "Add rollers",
            blank("way", "Round the bottom tube, the top tube, or grooved: bottom, top, grooved", Blank.Kind.WORDS),
            blank("capacity_lb", "Carries up or down, lb (empty: unknown, never a pass)", Blank.Kind.WORDS),
            blank("side_lb", "Holds across at one tube, lb (empty: unknown, never a pass)", Blank.Kind.WORDS),
            blank("play_in", "Loose between the wheels, up and down", Blank.Kind.INCHES),
            blank("standoff_in", "Middle of the tube from the post's face", Blank.Kind.INCHES),
            blank("takes_least_in", "Takes a tube from", Blank.Kind.INCHES),
            blank("takes_most_in", "To", Blank.Kind.INCHES),
            blank("bolts", "Bolts to its post", Blank.Kind.WORDS),
            blank("bolt_in", "Their diameter", Blank.Kind.INCHES),
            blank("bolts_apart_in", "From their highest to their lowest row", Blank.Kind.INCHES),
            blank("weight_lb", "Weighs, lb", Blank.Kind.WORDS)),
    OWN_TUBE(
            "tube",
            "A tube or post from its maker's sheet",
            "Add tube",
            blank("shape", "Shape: round, square or rectangular", Blank.Kind.WORDS),
            blank("depth_in", "Outside", Blank.Kind.INCHES),
            blank("width_in", "Outside the other way", Blank.Kind.INCHES),
            blank("wall_in", "Wall", Blank.Kind.INCHES),
            blank("yield_ksi", "Yield, ksi", Blank.Kind.WORDS),
            blank("ultimate_ksi", "Strength, ksi", Blank.Kind.WORDS)),
    RUN(
            "runs",
            "Another run",
            "Add run",
            "R",
            blank("start.run", "Begins on run", Blank.Kind.MAYBE),
            blank("start.station", "At its station", Blank.Kind.FEET),
            blank("start.east", "Or begins east of the origin", Blank.Kind.FEET),
            blank("start.north", "And north of it", Blank.Kind.FEET),
            blank("legs[].length", "First leg", Blank.Kind.FEET),
            blank("legs[].bearing", "Its bearing", Blank.Kind.DEGREES),
            blank("style", "Style", Blank.Kind.PICKED)),
    GATE(
            "gates",
            "Another gate",
            "Add gate",
            "G",
            blank("kind", "Kind", Blank.Kind.PICKED),
            blank("run", "On run", Blank.Kind.PICKED),
            blank("station", "Nearer post face, at station", Blank.Kind.FEET),
            blank("opening", "Clear between the posts", Blank.Kind.INCHES),
            blank("hinge", "Hinges, from outside", Blank.Kind.MAYBE),
            blank("swing", "Swings", Blank.Kind.MAYBE),
            blank("slides", "A slide opens to the", Blank.Kind.MAYBE)),
    OBSTACLE(
            "gates[].obstacles",
            "Something in the arc or behind it",
            "Add",
            "",
            blank("what", "What", Blank.Kind.WORDS),
            blank("along", "Along the fence, from the hinge foot", Blank.Kind.INCHES),
            blank("side", "To the swing side", Blank.Kind.INCHES)),
    AS_SET(
            "gates[].asSet",
            "The opening as the posts stand",
            "Write readings down",
            "",
            blank("date", "Day", Blank.Kind.DATE),
            blank("top", "Opening, top", Blank.Kind.INCHES),
            blank("middle", "Middle", Blank.Kind.INCHES),
            blank("bottom", "Bottom", Blank.Kind.INCHES),
            blank("hingePlumb.along", "Hinge post leans to the opening (away: minus)", Blank.Kind.INCHES),
            blank("hingePlumb.across", "Hinge post leans to the inside (out: minus)", Blank.Kind.INCHES),
            blank("latchPlumb.along", "Latch post leans to the opening (away: minus)", Blank.Kind.INCHES),
            blank("latchPlumb.across", "Latch post leans to the inside (out: minus)", Blank.Kind.INCHES)),
    /** No list: a gate is released once, or again under another letter. */
    RELEASE(
            "gates[].release",
            "Release it for the shop",
            "Release",
            "",
            blank("revision", "Revision letter", Blank.Kind.WORDS),
            blank("date", "Day", Blank.Kind.DATE),
            blank("by", "By whom", Blank.Kind.WORDS),
            blank("beforePosts", "Before its posts stand, signed by the customer", Blank.Kind.YES)),
    OWN_STYLES(
            OwnPartEntry.LIST + "styles",
            "Styles of your own, from a style file",
            "Take styles",
            "",
            blank("rows", "The file's lines", Blank.Kind.LINES)),
    LEG(
            "runs[].legs",
            "Add a leg or a curve",
            "Add leg",
            "",
            blank("length", "Length; empty for a curve", Blank.Kind.FEET),
            blank("turn", "Turn from the leg before", Blank.Kind.TURN),
            blank("diagonal", "Or tape across the corner", Blank.Kind.SIDED),
            blank("along", "Or on along the leg before", Blank.Kind.FEET),
            blank("off", "And square off it", Blank.Kind.SIDED),
            blank("arc.radius", "Radius of the curve", Blank.Kind.FEET),
            blank("arc.turn", "The curve turns in all", Blank.Kind.TURN),
            blank("arc.sagitta", "Chord off the curve at most", Blank.Kind.INCHES)),
    CHECK_TAPE(
            "runs[].checks",
            "A tape across, to check the corners",
            "Add tape",
            "",
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("taped", "The tape reads", Blank.Kind.FEET)),
    FIT_PART(
            "runs[].fits",
            "A stretch that follows the ground in another way",
            "Add stretch",
            "",
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("fit", "Fit there", Blank.Kind.PICKED)),
    OTHER_POSTS(
            "runs[].otherPosts",
            "A stretch whose posts are held in another way",
            "Add stretch",
            "",
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("support.kind", "Held by", Blank.Kind.PICKED),
            blank("support.depth", "How deep", Blank.Kind.INCHES)),
    SIDE(
            "runs[].sides",
            "A side on a basis, on posts, in holes or in bays of its own",
            "Add side",
            "",
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("basis", "Design basis there", Blank.Kind.MAYBE),
            blank("post", "Posts there", Blank.Kind.MAYBE),
            blank("hole", "Hole there", Blank.Kind.INCHES),
            blank("depth", "Depth there", Blank.Kind.INCHES),
            blank("maxBay", "Longest bay there", Blank.Kind.FEET)),
    NO_DIG(
            "runs[].noDig",
            "A stretch where no hole may be",
            "Add no-dig stretch",
            "",
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("why", "Why", Blank.Kind.WORDS),
            blank("ticket", "Locate ticket, of a utility", Blank.Kind.MAYBE)),
    KEEPS(
            "rules.keeps",
            "What a fence keeps in or out",
            "Add",
            "",
            blank("what", "Keeps", Blank.Kind.PICKED),
            blank("largest", "Gap under it, if another", Blank.Kind.INCHES),
            blank("runs", "Runs; all where empty", Blank.Kind.IDS)),
    GUARD(
            "rules.guards",
            "A stretch beside a drop: a guard",
            "Add guard",
            "",
            blank("run", "Run", Blank.Kind.PICKED),
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("drop", "Drop beside it", Blank.Kind.INCHES),
            blank("dwelling", "House of one or two families", Blank.Kind.MAYBE)),
    OLD_FENCE(
            "existing.fences",
            "An old fence to take out",
            "Add old fence",
            "",
            blank("kind", "What it is", Blank.Kind.WORDS),
            blank("length", "Length", Blank.Kind.FEET),
            blank("pitch", "From post to post", Blank.Kind.FEET),
            blank("concrete", "Posts in concrete", Blank.Kind.YES),
            blank("plugs", "Their concrete", Blank.Kind.MAYBE),
            blank("plugDiameter", "Its diameter", Blank.Kind.INCHES),
            blank("plugDepth", "Its depth", Blank.Kind.INCHES),
            blank("run", "On the line of run", Blank.Kind.MAYBE),
            blank("from", "Its first post at station", Blank.Kind.FEET),
            blank("treated", "Treated or painted", Blank.Kind.YES)),
    HEIGHT_RULE(
            "rules.otherHeights",
            "Another height rule",
            "Add height rule",
            "",
            blank("limit", "At most", Blank.Kind.FEET),
            blank("from", "Measured from", Blank.Kind.MAYBE)),
    LOT_LINE(
            "rules.propertyLines",
            "A lot line",
            "Add lot line",
            "",
            blank("what", "Which line", Blank.Kind.WORDS),
            blank("certifiedBy", "Who says where it is", Blank.Kind.MAYBE),
            blank("setback", "Keep the fence's face off it", Blank.Kind.INCHES),
            blank("points", "Its points, one a line", Blank.Kind.POINTS)),
    SIGHT(
            "rules.sights",
            "A corner where drivers must see",
            "Add sight triangle",
            "",
            blank("what", "Which corner", Blank.Kind.WORDS),
            blank("east", "Corner, east", Blank.Kind.FEET),
            blank("north", "Corner, north", Blank.Kind.FEET),
            blank("first", "Bearing of one leg", Blank.Kind.DEGREES),
            blank("firstLeg", "Its length", Blank.Kind.FEET),
            blank("second", "Bearing of the other leg", Blank.Kind.DEGREES),
            blank("secondLeg", "Its length", Blank.Kind.FEET),
            blank("height", "Fence no higher than", Blank.Kind.INCHES)),
    ACCESSIBLE(
            "rules.accessible",
            "A gate on an accessible way",
            "Add gate",
            "",
            blank("gate", "Gate", Blank.Kind.PICKED),
            blank("smoothBottom", "Smooth push side to 10 in.", Blank.Kind.MAYBE),
            blank("threshold", "Threshold", Blank.Kind.INCHES)),
    BUILDING(
            "rules.nearHouse.buildings",
            "A building near the fence",
            "Add building",
            "",
            blank("what", "Which building", Blank.Kind.WORDS),
            blank("corners", "Its corners, one a line", Blank.Kind.POINTS)),
    OVERNIGHT(
            "rules.overnight",
            "What must stay shut in, or out, overnight",
            "Add",
            "",
            blank("what", "Who or what", Blank.Kind.WORDS),
            blank("temporaryFence", "Temporary fence at hand", Blank.Kind.FEET)),
    POOL_RUN(
            "rules.pool.runs",
            "A run that closes the pool off",
            "Add run",
            "",
            blank(Blank.ITSELF, "Run", Blank.Kind.PICKED)),
    HARD_GROUND(
            "rules.pool.hardGround",
            "Hard ground under a pool's fence",
            "Add hard ground",
            "",
            blank("run", "Run", Blank.Kind.PICKED),
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET)),
    CLIMBABLE(
            "rules.pool.climbables",
            "Something to climb on near a pool's fence",
            "Add",
            "",
            blank("what", "What", Blank.Kind.WORDS),
            blank("run", "Run", Blank.Kind.PICKED),
            blank("station", "Station", Blank.Kind.FEET),
            blank("away", "Off the fence", Blank.Kind.INCHES)),
    POOL_GATE(
            "rules.pool.gates",
            "What is known of a pool's gate",
            "Add answers",
            "",
            blank("gate", "Gate", Blank.Kind.PICKED),
            blank("releaseHeight", "Release above the ground", Blank.Kind.INCHES),
            blank("releaseOnPoolSide", "Release on the pool side", Blank.Kind.MAYBE),
            blank("shielded", "Openings near the release shielded", Blank.Kind.YES),
            blank("lockable", "Can be locked", Blank.Kind.MAYBE),
            blank("closer", "Closes by itself", Blank.Kind.MAYBE),
            blank("inactiveFixed", "Second leaf of a pair fixed", Blank.Kind.MAYBE)),
    PRIVATE_LINE(
            "existing.lines",
            "A buried line that no locator marks",
            "Add line",
            "",
            blank("kind", "What runs in it", Blank.Kind.WORDS),
            blank("run", "Run", Blank.Kind.PICKED),
            blank("station", "Crosses at station", Blank.Kind.FEET),
            blank("width", "How wide it is", Blank.Kind.INCHES),
            blank("tolerance", "Keep off it by", Blank.Kind.INCHES)),
    PLUG(
            "existing.plugs",
            "Concrete of an old post on the line",
            "Add plug",
            "",
            blank("run", "Run", Blank.Kind.PICKED),
            blank("station", "Station", Blank.Kind.FEET),
            blank("diameter", "Diameter", Blank.Kind.INCHES),
            blank("depth", "Depth", Blank.Kind.INCHES),
            blank("fate", "What becomes of it", Blank.Kind.MAYBE)),
    TICKET(
            "existing.tickets",
            "A locate ticket",
            "Add ticket",
            "",
            blank("number", "Number", Blank.Kind.WORDS),
            blank("digFrom", "Dig from", Blank.Kind.DATE),
            blank("validThrough", "Valid through", Blank.Kind.DATE)),
    POINT_FILE(
            PointPaste.LIST,
            "Points of a survey, as a file has them",
            "Take points",
            "",
            blank("text", "Its lines", Blank.Kind.LINES),
            blank("order", "Order of columns", Blank.Kind.ORDER),
            blank("units", "Units", Blank.Kind.MAYBE)),
    SETUP(
            "ground.setups",
            "The level stood somewhere else",
            "Add setup",
            "H",
            blank("on", "Backsight on", Blank.Kind.PICKED),
            blank("backsight", "Rod read there", Blank.Kind.INCHES)),
    SHOT(
            "ground.shots",
            "A shot: on or beside a run, by east and north, or by two tapes",
            "Add shot",
            "S",
            blank("run", "Run", Blank.Kind.MAYBE),
            blank("station", "Station", Blank.Kind.FEET),
            blank("elevation", "Up or down", Blank.Kind.INCHES),
            blank("rod", "Or the rod reads", Blank.Kind.INCHES),
            blank("note", "Note", Blank.Kind.WORDS),
            blank("in", "Off the run, inside", Blank.Kind.FEET),
            blank("out", "Off the run, outside", Blank.Kind.FEET),
            blank("east", "Or east of the origin", Blank.Kind.FEET),
            blank("north", "And north of it", Blank.Kind.FEET),
            blank("tapes.from", "Or taped from", Blank.Kind.MAYBE),
            blank("tapes.length", "The tape", Blank.Kind.FEET),
            blank("tapes.and", "And from", Blank.Kind.MAYBE),
            blank("tapes.andLength", "That tape", Blank.Kind.FEET),
            blank("tapes.side", "Side, from the first to the second", Blank.Kind.MAYBE),
            blank("tapes.check", "Checked from", Blank.Kind.MAYBE),
            blank("tapes.checkLength", "Third tape", Blank.Kind.FEET),
            blank("setup", "Setup of the level", Blank.Kind.MAYBE)),
    BREAKLINE(
            "ground.breaklines",
            "A breakline: an edge the ground bends at",
            "Add breakline",
            "",
            blank("what", "What it is", Blank.Kind.WORDS),
            blank("shots", "Its shots, in order", Blank.Kind.IDS)),
    LATER(
            "ground.later",
            "Ground that will rise later",
            "Add rise",
            "",
            blank("run", "Run", Blank.Kind.PICKED),
            blank("from", "From station", Blank.Kind.FEET),
            blank("to", "To station", Blank.Kind.FEET),
            blank("rise", "Rises by", Blank.Kind.INCHES),
            blank("why", "Why", Blank.Kind.WORDS));

    private static final int ASKED_OF_A_SHOT = 5;
    private static final int ASKED_OF_A_LEG = 2;
    private static final Pattern OF_ONE = Pattern.compile("\\[[A-Za-z0-9._-]{1,20}]");
    private final String list;
    private final String heading;
    private final String words;
    private final String ids;

    @SuppressWarnings("ImmutableEnumChecker") // A copy that nobody can change.
    private final List<Blank> blanks;

    Ledger(String list, String heading, String words, String ids, Blank... blanks) {
        this.list = list;
        this.heading = heading;
        this.words = words;
        this.ids = ids;
        this.blanks = List.of(blanks);
    }

    /** A part of one's own: what one calls it, what its maker's sheet says of it, and which sheet that is. */
    Ledger(String part, String heading, String words, Blank... said) {
        this.list = OwnPartEntry.LIST + part;
        this.heading = heading;
        this.words = words;
        this.ids = "";
        List<Blank> sheet = new ArrayList<>();
        sheet.add(blank("id", "Short name, such as MINE-1", Blank.Kind.WORDS));
        sheet.add(blank("name", "What it is", Blank.Kind.WORDS));
        sheet.addAll(List.of(said));
        sheet.add(blank("source", "Sheet and its date", Blank.Kind.WORDS));
        this.blanks = List.copyOf(sheet);
    }

    private static Blank blank(String key, String label, Blank.Kind kind) {
        return new Blank(key, label, kind);
    }

    /** A list of a run names the run: {@code runs[R1].noDig}. */
    static Optional<Ledger> of(String list) {
        String kind = OF_ONE.matcher(list).replaceAll("[]");
        for (Ledger ledger : values()) if (ledger.list.equals(kind)) return Optional.of(ledger);
        return Optional.empty();
    }

    List<Blank> blanks() {
        return blanks;
    }

    boolean isOwnPart() {
        return list.startsWith(OwnPartEntry.LIST) && this != OWN_STYLES;
    }

    /** What shop and crew write down on site; none of it holds an amount. */
    boolean isForHands() {
        return this == HOURS || this == USED || this == MOISTURE;
    }

    /** The form, with what was typed and refused. */
    Entry entry(Opened opened) {
        return entry(opened, list);
    }

    /** @param place the list itself, of one run: {@code runs[R1].noDig} */
    Entry entry(Opened opened, String place) {
        Typed typed = opened.typed();
        boolean mine = typed.path().equals(place);
        List<Entry.Blank> shown = new ArrayList<>();
        for (Blank blank : blanks)
            shown.add(new Entry.Blank(
                    blank.key(),
                    blank.label(),
                    blank.kind().input(),
                    mine ? typed.form().getOrDefault(blank.key(), "") : "",
                    blank.kind().hint(opened.text().units()),
                    blank.kind().lengthIn(opened.text().units()),
                    choices(blank, opened)));
        return new Entry(place, heading, words, shown, asked(), isForHands(), mine ? typed.problem() : "");
    }

    /** How many blanks are asked at once: a leg or a shot can be said in many ways, and one of them is the usual. */
    private int asked() {
        return switch (this) {
            case SHOT -> ASKED_OF_A_SHOT;
            case LEG -> ASKED_OF_A_LEG;
            default -> blanks.size();
        };
    }

    /** The job with one more item. */
    DocumentText added(DocumentText text, String place, Map<String, String> typed) {
        String item = Blank.item(blanks, typed, ids.isEmpty() ? "" : nextId(text), text.units());
        return this == RELEASE
                ? text.with(place, item).with(place + ".kind", DocumentText.quoted("released"))
                : text.appended(place, item);
    }

    /** Where the item that is written down will stand. */
    String itemPlace(DocumentText before, String place) {
        return this == RELEASE ? place : place + "[" + before.count(place) + "]";
    }

    /** For the history: what was written down, without amounts. */
    String what() {
        return heading.substring(0, 1).toLowerCase(Locale.ROOT) + heading.substring(1) + " written down";
    }

    List<Choice> choices(Blank blank, Opened opened) {
        if (!blank.kind().isPicked()) return List.of();
        List<Choice> choices = new ArrayList<>();
        if (blank.kind() != Blank.Kind.PICKED) choices.add(new Choice("", "not said"));
        choices.addAll(LedgerChoices.of(this, blank, opened));
        return choices;
    }

    private String nextId(DocumentText text) {
        int largest = 0;
        for (int i = 0; i < text.count(list); i++) {
            String id = text.value(list + "[" + i + "].id").orElse("");
            if (id.matches(ids + "\\d{1,6}")) largest = Math.max(largest, Integer.parseInt(id.substring(ids.length())));
        }
        return ids + (largest + 1);
    }
}
