package plumbleaf.jobfile.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Existing;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PlugFate;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code existing}: private lines, plugs of old posts, the fence to be taken out, the locate request. */
final class ExistingForm {
    private static final LocalDate NO_DAY = LocalDate.of(2000, 1, 1);

    private static final TextKind<PlugFate> FATE =
            TextKind.oneOf("what becomes of a plug", List.of(PlugFate.values()), PlugFate::key);

    /** Wood fence with its posts. Common practice, no source. */
    private static final Force FENCE_PER_FOOT = Force.pounds(15);

    private static final Length PLUG_WIDE = Length.inches(10);
    private static final Length PLUG_DEEP = Length.inches(30);

    private ExistingForm() {}

    static Existing read(Fields existing) {
        List<PrivateLine> lines = new ArrayList<>();
        for (Fields fields : existing.objects("lines"))
            lines.add(new PrivateLine(
                    fields.needed("kind", TextKind.WORDS, ""),
                    fields.needed("run", TextKind.WORDS, ""),
                    fields.needed("station", Words.STATION, Length.ZERO),
                    fields.given("width", Words.HOLE).orElse(Length.ZERO),
                    fields.assumed(
                            "tolerance",
                            Words.HOLE,
                            Length.inches(24),
                            "the wider of the states' zones, common practice, no source")));
        List<Plug> plugs = new ArrayList<>();
        for (Fields fields : existing.objects("plugs"))
            plugs.add(new Plug(
                    fields.needed("run", TextKind.WORDS, ""),
                    fields.needed("station", Words.STATION, Length.ZERO),
                    fields.assumed("diameter", Words.HOLE, Length.inches(10), Words.CUSTOM),
                    fields.assumed("depth", Words.DEPTH, Length.inches(30), Words.CUSTOM),
                    fields.given("fate", FATE).orElse(PlugFate.LEAVE)));
        List<OldFence> fences = new ArrayList<>();
        for (Fields fields : existing.objects("fences")) fences.add(fence(fields));
        List<LocateTicket> tickets = new ArrayList<>();
        for (Fields fields : existing.objects("tickets")) {
            LocateTicket ticket = new LocateTicket(
                    fields.needed("number", TextKind.WORDS, ""),
                    fields.needed("digFrom", TextKind.DATE, NO_DAY),
                    fields.needed("validThrough", TextKind.DATE, NO_DAY));
            if (ticket.validThrough().isBefore(ticket.digFrom()))
                fields.refuse("validThrough", "the ticket ends before digging may begin", "check both dates");
            tickets.add(ticket);
        }
        return new Existing(lines, plugs, fences, tickets);
    }

    /** Sizes of its concrete are assumed only where it stands in any. */
    private static OldFence fence(Fields fields) {
        boolean concrete = fields.flag("concrete");
        return new OldFence(
                fields.needed("kind", TextKind.WORDS, ""),
                fields.needed("length", Words.LEG, Length.feet(8)),
                fields.assumed("pitch", Words.BAY, Length.feet(8), Words.CUSTOM),
                concrete,
                fields.given("perFoot", TextKind.FORCE).orElse(FENCE_PER_FOOT),
                concrete
                        ? fields.assumed("plugDiameter", Words.HOLE, PLUG_WIDE, Words.CUSTOM)
                        : fields.given("plugDiameter", Words.HOLE).orElse(PLUG_WIDE),
                concrete
                        ? fields.assumed("plugDepth", Words.DEPTH, PLUG_DEEP, Words.CUSTOM)
                        : fields.given("plugDepth", Words.DEPTH).orElse(PLUG_DEEP),
                concrete
                        ? fields.assumed("plugs", FATE, PlugFate.PULL, "hauled off with the fence")
                        : fields.given("plugs", FATE).orElse(PlugFate.PULL),
                Open.of(fields.given("run", TextKind.WORDS)),
                fields.given("from", Words.STATION).orElse(Length.ZERO),
                fields.flag("treated"));
    }

    static void write(Existing existing, Entries out) {
        out.objects("lines", existing.lines(), ExistingForm::writeLine);
        out.objects(
                "plugs",
                existing.plugs(),
                (plug, entries) -> entries.words("run", plug.run())
                        .put("station", TextKind.LENGTH, plug.station())
                        .put("diameter", TextKind.LENGTH, plug.diameter())
                        .put("depth", TextKind.LENGTH, plug.depth())
                        .put("fate", FATE, plug.fate()));
        out.objects("fences", existing.fences(), ExistingForm::writeFence);
        out.objects(
                "tickets",
                existing.tickets(),
                (ticket, entries) -> entries.words("number", ticket.number())
                        .put("digFrom", TextKind.DATE, ticket.digFrom())
                        .put("validThrough", TextKind.DATE, ticket.validThrough()));
    }

    private static void writeLine(PrivateLine line, Entries out) {
        out.words("kind", line.kind())
                .words("run", line.run())
                .put("station", TextKind.LENGTH, line.station())
                .put("tolerance", Words.HOLE, line.tolerance());
        if (!line.width().isZero()) out.put("width", Words.HOLE, line.width());
    }

    private static void writeFence(OldFence fence, Entries out) {
        out.words("kind", fence.kind())
                .put("length", TextKind.LENGTH, fence.length())
                .put("pitch", TextKind.LENGTH, fence.pitch())
                .put("perFoot", TextKind.FORCE, fence.perFoot());
        if (fence.concrete())
            out.flag("concrete", true)
                    .put("plugDiameter", TextKind.LENGTH, fence.plugDiameter())
                    .put("plugDepth", TextKind.LENGTH, fence.plugDepth())
                    .put("plugs", FATE, fence.plugs());
        fence.run().value().ifPresent(run -> out.words("run", run).put("from", TextKind.LENGTH, fence.from()));
        out.flag("treated", fence.treated());
    }
}
