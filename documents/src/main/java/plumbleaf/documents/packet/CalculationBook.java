package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.documents.view.FreeBody;
import plumbleaf.documents.view.SagBar;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.design.Checkpoint;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.IceDrop;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.WoodPostStrength;

/** For whoever reviews the numbers: a summary first, what is assumed apart, then each check with its formula, its numbers and its result. */
public final class CalculationBook {
    private static final double FREE_BODY_HIGH_IN = 3.4;

    private CalculationBook() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper =
                Paper.titled("Calculation book", subject.running()).flag(subject.flag());
        paper.say(
                "For review by a licensed engineer where one is required. Nothing here is an approval; local code governs.");
        if (!subject.options().input().isEmpty())
            paper.note(
                    "Input: the job file, SHA-256 " + grouped(subject.options().input())
                            + ". Another file gives another number; the same file gives this book again.");
        summary(paper, subject);
        basis(paper, subject);
        assumptions(paper, subject);
        for (GatePaper gate : subject.gates()) gate(paper, subject, gate);
        for (SlidePaper gate : subject.slides())
            SlideCalculation.add(
                    paper, subject, gate, Pages.columnWidth(subject.options().size()));
        posts(paper, subject);
        byHand(paper, "a post and its footing");
        findings(paper, subject);
        paper.heading("Review");
        paper.add(new Block.Blank(List.of("Seal and signature, where one is required"), 1.8));
        paper.add(new Block.Blank(List.of("Reviewed by", "License", "Date"), 0.4));
        return paper.paper();
    }

    /** In groups of eight that a person can read aloud. */
    private static String grouped(String digits) {
        return digits.replaceAll("(.{8})(?!$)", "$1 ");
    }

    private static void summary(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Summary");
        Table.Builder table = Table.with(
                Column.left("Part"),
                Column.words("Check"),
                Column.right("Is"),
                Column.right("Limit"),
                Column.right("Ratio"),
                Column.left("Says"),
                Column.words("Clause"));
        for (Finding finding : subject.findings())
            finding.measure()
                    .ifPresent(measure -> table.rowAbout(
                            finding.part(),
                            finding.part(),
                            words(finding.id()),
                            number(measure.measured(), measure.unit()),
                            number(measure.limit(), measure.unit()),
                            measure.ratioText(),
                            finding.severity().words(),
                            finding.basis().words()));
        if (table.isEmpty()) paper.say("No check compares two numbers here.");
        else paper.add(table.table());
        long cannot = subject.findings().stream()
                .filter(finding -> finding.severity() == Severity.CANNOT_SAY)
                .count();
        if (cannot > 0)
            paper.add(Block.Paragraph.bold(
                    cannot + " cannot be said: see the findings at the end. What cannot be said is not passed."));
    }

    /** {@code sag.latch} reads sag, latch. */
    private static String words(String id) {
        return id.replace(".", ": ").replace('-', ' ');
    }

    private static String number(double value, String unit) {
        double size = Math.abs(value);
        int places = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        String text = size >= 1000 ? DecimalText.whole(value) : DecimalText.fixed(value, places);
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private static void basis(Paper.Builder paper, PacketSubject subject) {
        Site site = subject.job().site();
        paper.heading("Basis");
        if (subject.units() == DisplayUnits.METRIC)
            paper.note("Each formula is worked in the US units of the clause it stands in; its result is"
                    + " given in both. Everything else is metric, but for names by which things are sold.");
        Table.Builder table = Table.with(Column.left("What"), Column.words("Value"), Column.words("From"));
        table.row(
                "Basis of design",
                site.basis().key(),
                site.forcesEngineered() ? "the use of the place forces engineered" : "the job");
        table.row(
                "Wind",
                DecimalText.fixed(site.wind().speed().mph(), 0) + " mph, exposure "
                        + site.wind().exposure().key() + ", Kzt "
                        + DecimalText.upTo(site.wind().topographic(), 2) + ", Ke "
                        + DecimalText.upTo(site.wind().elevation(), 2),
                "ASCE " + site.wind().edition().key() + ", risk category "
                        + site.wind().risk().key());
        table.row(
                "Frost",
                subject.inches(site.frost().depth().inches()),
                site.frost().source());
        table.row(
                "Soil",
                site.soil().kind().key() + ", " + site.soil().state().key()
                        + (site.soil().belowWater() ? ", water in the hole" : "") + ", loose top "
                        + subject.inches(site.soil().looseTop().inches()),
                "IBC Table 1806.2 class " + site.soil().ibcClass() + "; band soft, likely, stiff by judgement");
        table.row(
                "Combinations",
                "D, D+L, D+0.6W, D+0.75L+0.45W, 0.6D+0.6W; leaf closed, worst, open",
                "ASCE 7-16 2.4.1, allowable stress; D+L+0.7Di and D+0.7Di+0.7Wi where the job asks for ice, 2.4.3 (from memory)");
        table.row(
                "Steel",
                "E 29,000 ksi, G 11,200 ksi, 490 pcf; section properties on the design wall where it counts",
                "AISC 360");
        table.row("Concrete", "150 pcf", "usual value");
        paper.add(table.table());
        for (String gust : subject.gusts()) paper.say(gust);
    }

    private static void assumptions(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Assumed and judged");
        Table.Builder table = Table.with(Column.words("Value"), Column.left("Taken as"), Column.words("Rests on"));
        for (Assumption assumption : subject.job().assumed())
            table.row(assumption.field(), assumption.value(), assumption.why());
        if (!table.isEmpty()) paper.add(table.table());
        List<String> judged = new ArrayList<>();
        for (Finding finding : subject.findings()) {
            boolean soft = finding.basis().kind() != Basis.Kind.CLAUSE
                    && finding.basis().kind() != Basis.Kind.JOB;
            String line = words(finding.id()) + ": " + finding.basis().words() + ".";
            if (soft && !judged.contains(line)) judged.add(line);
        }
        if (!judged.isEmpty()) {
            paper.subheading("Checks that rest on judgement, common practice or memory");
            for (String line : judged) paper.say(line);
        }
    }

    private static void gate(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        for (GatePaper leaf : gate.leaves()) leafOf(paper, subject, leaf);
        gate.pair()
                .ifPresent(pair -> PairCalculation.add(
                        paper, gate, pair, subject.job().site().soil().ibcClass()));
    }

    private static void leafOf(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        Leaf leaf = gate.leaf();
        paper.heading((gate.isPair() ? "Leaf " : "Gate ") + gate.mark());
        paper.say(gate.subject().sentence() + ". Frame "
                + gate.subject().parts().frame().name() + "; hinge post "
                + gate.subject().hingePost() + ", "
                + gate.subject().parts().hingePost().name() + ".");
        double weight = leaf.weight().wet().pounds();
        double arm = leaf.weight().centreOfGravity().r().inches();
        double spacing = leaf.pinSpacing().inches();
        paper.add(new Block.Formula(
                "Hinge couple under dead load, leaf closed",
                "statics",
                "H = W a / d; W leaf with wet wood, a center of gravity from the pins, d between the pins",
                DecimalText.fixed(weight, 0) + " lb \u00d7 " + inch(arm) + " / " + inch(spacing),
                DecimalText.fixed(weight * arm / spacing, 1)
                        + " lb, towards the latch at the top hinge, away from it at the bottom"));
        swing(paper, subject, gate.subject().swing());
        for (GatePaper.Hangs hangs : gate.hangs()) hangs(paper, subject, gate, leaf, hangs);
    }

    private static void swing(Paper.Builder paper, PacketSubject subject, Swing swing) {
        paper.add(new Block.Formula(
                "Least room under the leaf over the swing",
                "exact over flat triangles of the ground; closed form on one plane: tan q = m_t / m_s",
                "c(r, q) = leaf bottom less ground, least over all r and q from closed to "
                        + DecimalText.fixed(swing.opens().inDegrees(), 0) + "\u00b0",
                "unloaded leaf " + inch(swing.least().clear().inches()) + " at r "
                        + inch(swing.least().atRadius().inches()) + ", q "
                        + DecimalText.fixed(swing.least().atAngle().inDegrees(), 1) + "\u00b0; both faces "
                        + inch(swing.leastOfFaces().clear().inches()),
                inch(swing.running().clear().inches()) + " in service, less drop and later ground; shots are good to "
                        + subject.inches(swing.shotError().inches())));
    }

    private static String inch(double value) {
        return DecimalText.fixed(value, 3) + " in.";
    }

    private static void hangs(
            Paper.Builder paper, PacketSubject subject, GatePaper gate, Leaf leaf, GatePaper.Hangs hangs) {
        paper.subheading("Drop of the free latch corner, dead load, likely soil");
        ByCause cause = hangs.sag().byCause();
        double slack = gate.subject().parts().hinge().slack().inches();
        paper.add(new Block.Formula(
                "By virtual work; every part is one share, and the shares add up to the drop of the whole structure",
                "unit load method; frame of leaf, hinges, post and footing springs",
                "drop = \u03a3 integral of (M m / EI + N n / EA + T t / GJ) + \u03a3 springs, plus hinge play",
                "leaf " + inch(cause.leaf().inches()) + " + hinges give "
                        + inch(cause.hingeFlex().inches()) + " + post "
                        + inch(cause.post().inches()) + " + footing "
                        + inch(cause.footing().inches()) + " + play "
                        + inch(cause.hingeSlack().inches()),
                inch(hangs.sag().total().inches())));
        paper.add(new Block.Formula(
                "Hinge play, a turn of the whole leaf beside the elastic drop",
                "geometry",
                "slack = (s top + s bottom) b / d",
                "(" + inch(slack) + " + " + inch(slack) + ") \u00d7 "
                        + inch(leaf.outline().latchEdge().inches()) + " / "
                        + inch(leaf.pinSpacing().inches()),
                inch(2
                        * slack
                        * leaf.outline().latchEdge().inches()
                        / leaf.pinSpacing().inches())));
        paper.add(bySoil(hangs.sag()));
        hangs.sag().ice().ifPresent(ice -> ice(paper, ice));
        double wide = Pages.columnWidth(subject.options().size()) - 0.3;
        paper.add(new Block.Picture(
                SagBar.of(gate.id(), hangs.sag(), hangs.limits(), wide, subject.units()),
                "Sag budget against its limits"));
        freeBodies(paper, subject, gate, hangs);
        cases(paper, hangs);
        Table.Builder hinges = Table.with(
                Column.left("Hinge"),
                Column.right("Pin above grade"),
                Column.right("Sideways, lb"),
                Column.right("May be, lb"),
                Column.right("Ratio"),
                Column.words("In case"));
        for (GatePaper.HingePull pull : hangs.hinges())
            hinges.rowAbout(
                    pull.id(),
                    pull.id(),
                    subject.length(pull.z().inches()),
                    DecimalText.whole(pull.pull().pounds()),
                    pull.capacity().isZero()
                            ? "unknown"
                            : DecimalText.whole(pull.capacity().pounds()),
                    pull.capacity().isZero()
                            ? "\u2013"
                            : DecimalText.fixed(
                                    pull.pull().pounds() / pull.capacity().pounds(), 2),
                    pull.inCase());
        if (!hinges.isEmpty()) paper.subheading("Hinges").add(hinges.table());
        byHand(paper, gate.mark());
        if (hangs.loadPath().isEmpty()) return;
        if (gate.isPair() && !gate.mark().equals(gate.id() + "a")) {
            paper.say("The load path of both leaves stands with leaf " + gate.id() + "a.");
            return;
        }
        paper.add(new Block.Picture(
                ChainPicture.of(gate.id(), LoadChain.of(hangs.loadPath()), Math.min(wide, 5), true),
                "Load path: the worst link of each kind, as the load walks it. Wood is no link."));
        links(paper, hangs.loadPath());
    }

    /** Leaf and post cut apart under the leaf's own weight, with the one line that a hand check needs. */
    private static void freeBodies(Paper.Builder paper, PacketSubject subject, GatePaper gate, GatePaper.Hangs hangs) {
        Optional<CaseForces> dead = hangs.cases().stream()
                .filter(each -> each.combination().key().equals("D")
                        && each.state().key().equals("closed"))
                .findFirst();
        if (dead.isEmpty() || gate.leaf().pins().size() < 2) return;
        Drawing bodies = Scale.fitted(
                subject.units(),
                scale -> FreeBody.of(gate.subject(), dead.get(), scale),
                Pages.columnWidth(subject.options().size()),
                FREE_BODY_HIGH_IN);
        double weight = gate.leaf().weight().wet().pounds();
        double arm = gate.leaf().weight().centreOfGravity().r().inches();
        double apart = gate.leaf().pinSpacing().inches();
        paper.add(new Block.Picture(
                bodies,
                "Free bodies of " + gate.mark() + " under its own weight, closed. By hand: H = W a / d = "
                        + DecimalText.whole(weight) + " lb \u00d7 " + inch(arm) + " / " + inch(apart) + " = "
                        + DecimalText.whole(weight * arm / apart) + " lb."));
    }

    /** Room for whoever checks a topic by hand: initials, the number found, the date. */
    private static void byHand(Paper.Builder paper, String topic) {
        paper.add(new Block.Blank(List.of("By hand, " + topic, "Found", "Initials, date"), 0.3));
    }

    /** Every link with its formula and the numbers put in. */
    private static void ice(Paper.Builder paper, IceDrop ice) {
        paper.add(new Block.Formula(
                "Ice on the leaf: 56 lb/ft3 all round members and steel pickets of circle D, on boards, mesh and sheet by one face A; design thickness as the job gives it",
                "ASCE 7-16 10.4.1, equations 10.4-1 and 10.4-2, and 2.4.3 (from memory)",
                "Di = 56 \u03a3 \u03c0 t (D + t) L + 56 \u03a3 0.8 \u03c0 t A; strength by D + L + 0.7 Di, drop by Di alone; wind on ice is not worked out",
                "t = " + inch(ice.thickness().inches()) + ", Di = "
                        + DecimalText.fixed(ice.weight().pounds(), 1) + " lb",
                "latch corner " + inch(ice.drop().inches()) + " down until it thaws"));
    }

    /** The drop in each soil, and on a deeper footing where there is a footing to dig deeper. */
    private static Block bySoil(GateSag sag) {
        List<Column> heads = new ArrayList<>(
                List.of(Column.words("Soil"), Column.right("Soft"), Column.right("Likely"), Column.right("Stiff")));
        List<String> drops = new ArrayList<>(List.of(
                "total drop",
                inch(sag.soil().soft().inches()),
                inch(sag.soil().likely().inches()),
                inch(sag.soil().stiff().inches())));
        sag.sixDeeper().ifPresent(deeper -> {
            heads.add(Column.right("Footing 6 in. deeper"));
            drops.add(inch(deeper.inches()));
        });
        return Table.with(heads.toArray(Column[]::new))
                .row(drops.toArray(String[]::new))
                .table();
    }

    static void links(Paper.Builder paper, List<LinkUse> links) {
        Table.Builder table = Table.with(
                Column.words("Link"),
                Column.right("Ratio"),
                Column.words("Formula, clause"),
                Column.words("Numbers, case"));
        for (LinkUse link : links)
            table.rowAbout(
                    link.part(),
                    link.link() + " " + link.part(),
                    DecimalText.fixed(link.utilisation(), 2),
                    link.work().formula() + " (" + link.work().clause() + ")",
                    link.work().numbers() + " (" + link.inCase() + ")");
        paper.subheading("Links of the load path").add(table.table());
    }

    private static void cases(Paper.Builder paper, GatePaper.Hangs hangs) {
        Table.Builder table = Table.with(
                Column.left("Combination"),
                Column.left("Leaf"),
                Column.left("Wind"),
                Column.right("Open"),
                Column.right("Along, lb-ft"),
                Column.right("Across, lb-ft"),
                Column.right("Both, lb-ft"),
                Column.right("Torsion, lb-ft"),
                Column.right("Down, lb"));
        for (CaseForces each : hangs.cases()) {
            BaseAction post = each.hingePost();
            table.row(
                    each.combination().key(),
                    each.state().key(),
                    each.combination().wind() > 0 ? each.wind().key() : "\u2013",
                    DecimalText.fixed(each.angle().inDegrees(), 0) + "\u00b0",
                    DecimalText.whole(post.momentAlong().inPoundFeet()),
                    DecimalText.whole(post.momentAcross().inPoundFeet()),
                    DecimalText.whole(together(post)),
                    DecimalText.whole(post.torsion().inPoundFeet()),
                    DecimalText.whole(post.down().pounds()));
        }
        paper.subheading("Hinge post at grade, every case").add(table.table());
        paper.note(
                "Along: + tips the post towards the latch. Across: + towards the outside. Torsion: + turns it the way the gate swings.");
    }

    private static double together(BaseAction action) {
        return StrictMath.hypot(
                action.momentAlong().inPoundFeet(), action.momentAcross().inPoundFeet());
    }

    /** Every post in one table; then the hardest worked one of each section with its formula. */
    private static void posts(Paper.Builder paper, PacketSubject subject) {
        if (subject.checked().isEmpty()) return;
        paper.heading("Posts and footings");
        Table.Builder table = Table.with(
                Column.left("Post"),
                Column.words("Section"),
                Column.words("Governs"),
                Column.right("Moment, lb-ft"),
                Column.right("Push, lb"),
                Column.right("Used"),
                Column.right("Needs"),
                Column.right("Dug"),
                Column.left("By"));
        for (PostDesign post : subject.checked()) {
            BaseAction action = post.check().governing().action();
            table.rowAbout(
                    post.id(),
                    post.id(),
                    post.section().name(),
                    post.check().governing().name(),
                    DecimalText.whole(together(action)),
                    DecimalText.whole(StrictMath.hypot(
                            action.along().pounds(), action.across().pounds())),
                    post.utilisation() > 0 ? DecimalText.fixed(post.utilisation(), 2) : "not said",
                    post.footing().map(is -> inch1(is.depthNeeded().inches())).orElse("\u2013"),
                    post.depth().isZero()
                            ? "\u2013"
                            : subject.inches(post.depth().inches()),
                    post.depthBy());
        }
        paper.add(table.table());
        paper.note(
                "Moments at grade, allowable-stress level. Used: the most of any check, wind counted whatever the basis. Needs: the deepest that binds on the job's basis; what code loads ask for beyond it stands below.");
        subject.checked().stream()
                .flatMap(post -> post.wind().stream())
                .findFirst()
                .ifPresent(work -> PostCalculation.velocity(
                        paper, work, subject.job().site().wind()));
        List<String> shown = new ArrayList<>();
        List<PostDesign> hardest = new ArrayList<>(subject.checked());
        hardest.sort(java.util.Comparator.comparingDouble(
                        (PostDesign post) -> -post.check().utilisation())
                .thenComparing(PostDesign::id));
        for (PostDesign post : hardest) {
            if (shown.contains(post.section().id()) && post.held().facts().isEmpty()) continue;
            shown.add(post.section().id());
            post(paper, subject, post);
        }
    }

    private static String inch1(double value) {
        return DecimalText.fixed(value, 1) + " in.";
    }

    /** What something else than a hole must do to hold it, number by number. */
    private static void held(Paper.Builder paper, PostDesign post) {
        if (post.held().facts().isEmpty()) return;
        Table.Builder table = Table.with(Column.words("What holds " + post.id()), Column.right("Value"));
        for (HeldPost.Fact fact : post.held().facts())
            table.row(fact.words(), DecimalText.upTo(fact.value(), decimals(fact.unit())) + " " + fact.unit());
        paper.add(table.table());
    }

    private static int decimals(String unit) {
        return switch (unit) {
            case "in", "lb/in3" -> 2;
            case "rad" -> 5;
            default -> 0;
        };
    }

    private static void post(Paper.Builder paper, PacketSubject subject, PostDesign post) {
        boolean onWall = post.post()
                .support()
                .match(dug -> false, driven -> false, plate -> false, socket -> false, wall -> true, existing -> false);
        if (onWall) {
            paper.subheading(post.id() + ", on the wall");
            held(paper, post);
            return;
        }
        BaseAction action = post.check().governing().action();
        double moment = together(action) * 12;
        paper.subheading("Post " + post.id() + ", " + post.section().name() + ": the hardest worked of its section");
        post.wind()
                .ifPresent(work -> PostCalculation.wind(
                        paper, post, work, subject.job().site().wind()));
        paper.add(post.section().match(steel -> bending(post, steel, moment), wood -> bending(post, wood, moment)));
        Table.Builder needs = Table.with(Column.words("The hole must be as deep as"), Column.right("Needs"));
        post.footing().ifPresent(footing -> {
            for (var need : footing.needs())
                if (need.depth().inches() > 0.05)
                    needs.row(
                            need.cause().key()
                                    + need.lateral()
                                            .map(work -> ", " + work.worst().name())
                                            .orElse("")
                                    + (need.binds() ? "" : ", not binding on this basis"),
                            inch1(need.depth().inches()));
        });
        if (!needs.isEmpty()) {
            needs.total(
                    "dug, " + post.depthBy() + " governs",
                    subject.inches(post.depth().inches()));
            paper.add(needs.table());
        }
        PostCalculation.depths(paper, post, subject.job().site().soil().ibcClass());
        held(paper, post);
        StringBuilder checks = new StringBuilder();
        for (Checkpoint check : post.checks())
            checks.append(checks.length() == 0 ? "" : "; ")
                    .append(check.check())
                    .append(' ')
                    .append(DecimalText.fixed(check.utilisation(), 2));
        if (checks.length() > 0) paper.say("All checks of " + post.id() + ": " + checks + ".");
        post.rated().ifPresent(gust -> paper.say("Post and footing reach " + gust.words() + "."));
    }

    private static Block bending(PostDesign post, Section section, double moment) {
        double fy = section.yieldStress().inKsi();
        double z = section.zxIn3();
        double allowed = fy * 1000 * z / 1.67;
        return new Block.Formula(
                "Bending at grade, " + post.check().governing().name(),
                "AISC 360-22 F8 or F7, ASD, omega 1.67",
                "Ma = Fy Z / 1.67",
                DecimalText.fixed(fy, 0) + " ksi \u00d7 " + DecimalText.fixed(z, 3) + " in\u00b3 / 1.67 = "
                        + DecimalText.whole(allowed) + " lb-in; demand " + DecimalText.whole(moment) + " lb-in",
                "M / Ma = " + DecimalText.fixed(moment / allowed, 2) + " by moment alone; "
                        + DecimalText.fixed(post.check().utilisation(), 2)
                        + " with axial, shear and torsion as the clause adds them");
    }

    private static Block bending(PostDesign post, WoodPost wood, double moment) {
        double s = Math.min(wood.sxIn3(), wood.syIn3());
        double duration = WoodPostStrength.duration(post.check().governing().combination());
        double psi = WoodPostStrength.of(wood).bending().psi() * duration;
        return new Block.Formula(
                "Bending at grade, " + post.check().governing().name(),
                "NDS 2018 4.3 and 6.3, wet service, size, incising or steaming, duration "
                        + DecimalText.upTo(duration, 2),
                "Ma = Fb' S",
                DecimalText.whole(psi) + " psi \u00d7 " + DecimalText.fixed(s, 2) + " in\u00b3 = "
                        + DecimalText.whole(psi * s) + " lb-in; demand " + DecimalText.whole(moment) + " lb-in",
                "Used " + DecimalText.fixed(post.check().utilisation(), 2)
                        + " with weight, both ways of bending and shear as the clauses add them");
    }

    /** Every finding in its own words, with what would cure it. */
    private static void findings(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Findings, worst first");
        Table.Builder table =
                Table.with(Column.left("Says"), Column.left("Part"), Column.words("Finding"), Column.right("Ratio"));
        for (Finding finding : subject.findings()) {
            StringBuilder words = new StringBuilder(finding.message());
            for (Remedy remedy : finding.remedies()) {
                words.append("\nRemedy: ").append(remedy.words());
                if (remedy.ratio().isPresent())
                    words.append(", ratio then ")
                            .append(DecimalText.fixed(remedy.ratio().getAsDouble(), 2));
                words.append('.');
            }
            words.append("\nBasis: ").append(finding.basis().words());
            table.rowAbout(
                    finding.part(),
                    finding.severity().words(),
                    finding.part(),
                    words.toString(),
                    finding.measure().map(Measure::ratioText).orElse(""));
        }
        if (table.isEmpty()) paper.say("None.");
        else paper.add(table.table());
    }
}
