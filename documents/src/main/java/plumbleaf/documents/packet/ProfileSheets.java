package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Sheet;
import plumbleaf.documents.drawing.Viewport;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.RunPosts;
import plumbleaf.documents.view.RunProfile;
import plumbleaf.documents.view.SlideOnProfile;
import plumbleaf.documents.view.StationNote;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Offset;

/** Every run unrolled, in strips one under another, cut at posts so that the scale stays readable. */
public final class ProfileSheets {
    /** The usual scale, 1/4 in. to the foot, then down to 1/8 in. */
    private static final List<Double> SCALES = List.of(48.0, 64.0, 96.0);

    /** From 3/4 in. to the foot: what a short job is drawn at where that takes no more sheets than the usual scale. */
    private static final List<Double> LARGER = List.of(16.0, 24.0, 32.0);

    /** What a job is drawn at where that saves sheets and its posts still stand a column apart. */
    private static final double SMALLER = 64.0;

    /** Jobs of more strips than this are drawn once. */
    private static final int SEVERAL_STRIPS = 40;

    /** Jobs of more strips than this are not tried larger. */
    private static final int FEW_STRIPS = 8;

    /** A run of more strips than this is drawn smaller where its posts stand far enough apart for their columns. */
    private static final int MANY_STRIPS = 10;

    private static final double COLUMN_IN = 0.98;
    private static final double BAND_SIDES_IN = 2.2;
    private static final double BETWEEN_IN = 0.08;
    private static final int MOST_TRIES = 12;
    private static final double NARROWER = 0.85;

    private ProfileSheets() {}

    /** The strips of all runs, each at a scale a crew can read; a short job on as few sheets as it goes, and as large as those allow. */
    public static List<Drawing> drawings(PacketSubject subject) {
        Box room = Sheet.room(subject.options().sheets(), true);
        List<Drawing> usual = drawings(subject, room, SCALES);
        if (usual.size() > SEVERAL_STRIPS) return usual;
        int sheets = stacked(usual, room).size();
        if (sheets > 1 && hasColumns(subject, SMALLER)) {
            List<Drawing> smaller = drawings(subject, room, List.of(SMALLER));
            if (stacked(smaller, room).size() < sheets) return smaller;
        }
        if (usual.size() > FEW_STRIPS) return usual;
        for (double per : LARGER) {
            List<Drawing> larger = drawings(subject, room, List.of(per));
            boolean fits = larger.stream()
                    .allMatch(strip -> strip.paperWidthIn() <= room.width() && needs(strip) <= room.height());
            if (fits && stacked(larger, room).size() <= sheets) return larger;
        }
        return usual;
    }

    private static boolean hasColumns(PacketSubject subject, double per) {
        return subject.layout().runs().stream().allMatch(run -> pitch(run) / per >= COLUMN_IN);
    }

    private static double pitch(RunLayout run) {
        return run.line().line().length().inches() / Math.max(1, run.posts().size() - 1);
    }

    private static List<Drawing> drawings(PacketSubject subject, Box room, List<Double> scales) {
        List<Drawing> strips = new ArrayList<>();
        for (RunLayout run : subject.layout().runs()) {
            if (RunPosts.on(run, subject.posts()).size() < 2) continue;
            Scale scale = scale(subject, run, room.width(), scales);
            strips.addAll(fitting(subject, run, scale, room.width()));
        }
        return List.copyOf(strips);
    }

    private static Scale scale(PacketSubject subject, RunLayout run, double wideIn, List<Double> scales) {
        double length = run.line().line().length().inches();
        double chosen = scales.get(0);
        for (double per : scales)
            if (length > MANY_STRIPS * chosen * (wideIn - BAND_SIDES_IN) && pitch(run) / per >= COLUMN_IN) chosen = per;
        return Scale.fitting(subject.units(), 1, 1, 1 / chosen, 1 / chosen);
    }

    /** Cut at the nearest posts a strip may come out longer than its share: then the shares are made smaller until every strip has room. */
    private static List<Drawing> fitting(PacketSubject subject, RunLayout run, Scale scale, double wideIn) {
        double most = scale.real(wideIn - BAND_SIDES_IN);
        List<Drawing> strips = strips(subject, run, scale, most);
        for (int tries = 0; tries < MOST_TRIES && !fit(strips, wideIn); tries++) {
            most *= NARROWER;
            strips = strips(subject, run, scale, most);
        }
        return strips;
    }

    private static boolean fit(List<Drawing> strips, double wideIn) {
        return strips.stream().allMatch(strip -> strip.paperWidthIn() <= wideIn);
    }

    private static List<Drawing> strips(PacketSubject subject, RunLayout run, Scale scale, double mostIn) {
        List<Offset> cuts = cuts(
                RunPosts.on(run, subject.posts()).stream()
                        .map(post -> post.post().station())
                        .toList(),
                mostIn);
        List<Drawing> strips = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) strips.add(strip(subject, run, cuts.get(i), cuts.get(i + 1), scale));
        return strips;
    }

    private static Drawing strip(PacketSubject subject, RunLayout run, Offset from, Offset to, Scale scale) {
        List<PostDetail> posts = RunPosts.on(run, subject.posts());
        RunProfile.Strip strip = new RunProfile.Strip(
                run,
                subject.ground().profile(run.run()),
                posts,
                subject.placedGates().stream()
                        .filter(gate -> onRun(subject, gate.gate().plan().gate(), run.run()))
                        .toList(),
                subject.slides().stream()
                        .filter(slide -> slide.asked().run().equals(run.run()))
                        .map(slide -> new SlideOnProfile(slide.subject()))
                        .toList(),
                StationNote.of(
                        subject.job(), subject.layout(), run, subject.ground().profile(run.run())),
                from,
                to);
        return RunProfile.of(strip, subject.units(), scale);
    }

    private static boolean onRun(PacketSubject subject, String gate, String run) {
        return subject.gates().stream()
                .anyMatch(each -> each.id().equals(gate) && each.asked().run().equals(run));
    }

    /** Posts at which a run is cut, first and last among them: as few strips as possible, about equally long. */
    private static List<Offset> cuts(List<Offset> stations, double mostIn) {
        double start = stations.get(0).inches();
        double end = stations.get(stations.size() - 1).inches();
        int count = (int) Math.max(1, Math.ceil((end - start) / mostIn - 1e-9));
        List<Offset> cuts = new ArrayList<>();
        cuts.add(stations.get(0));
        for (int i = 1; i < count; i++) {
            double wanted = start + (end - start) * i / count;
            Offset best = stations.get(0);
            for (Offset station : stations)
                if (Math.abs(station.inches() - wanted) < Math.abs(best.inches() - wanted)) best = station;
            if (best.compareTo(cuts.get(cuts.size() - 1)) > 0) cuts.add(best);
        }
        if (stations.get(stations.size() - 1).compareTo(cuts.get(cuts.size() - 1)) > 0)
            cuts.add(stations.get(stations.size() - 1));
        return cuts;
    }

    private static double needs(Drawing strip) {
        return strip.paperHeightIn() + Viewport.TITLE_IN + BETWEEN_IN;
    }

    /** As many strips on a sheet as there is height for, in their order. */
    private static List<List<Drawing>> stacked(List<Drawing> strips, Box room) {
        List<List<Drawing>> sheets = new ArrayList<>();
        double left = 0;
        for (Drawing strip : strips) {
            if (sheets.isEmpty() || left < needs(strip)) {
                sheets.add(new ArrayList<>());
                left = room.height();
            }
            sheets.get(sheets.size() - 1).add(strip);
            left -= needs(strip);
        }
        return sheets;
    }

    public static List<Drawing> pages(PacketSubject subject) {
        Box room = Sheet.room(subject.options().sheets(), true);
        List<List<Drawing>> sheets = stacked(drawings(subject), room);
        List<Drawing> pages = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++)
            pages.add(sheet(subject, sheets.get(i), room).page((i + 1) + " of " + sheets.size()));
        return pages;
    }

    private static Sheet sheet(PacketSubject subject, List<Drawing> strips, Box room) {
        List<Viewport> viewports = new ArrayList<>();
        double used = strips.stream()
                .mapToDouble(strip -> strip.paperHeightIn() + Viewport.TITLE_IN)
                .sum();
        double gap = Math.max(0.05, (room.height() - used) / (strips.size() + 1));
        double y = room.maxY();
        for (Drawing strip : strips) {
            y -= gap + strip.paperHeightIn();
            double x = room.centre().x() - strip.paperWidthIn() / 2;
            viewports.add(new Viewport(strip, new Point(x, y), strip.name()));
            y -= Viewport.TITLE_IN;
        }
        List<String> cautions = new ArrayList<>(subject.tickets());
        cautions.add("Set tops from the string, not from the spacing: stations run from one zero.");
        cautions.add("Where a hole refuses before its depth, stop and call.");
        return new Sheet(
                "Unrolled profile",
                subject.options().sheets(),
                true,
                subject.block(
                        "Unrolled profile, from outside",
                        "",
                        strips.stream()
                                        .allMatch(strip -> strip.scale()
                                                .equals(strips.get(0).scale()))
                                ? strips.get(0).scale().words()
                                : "as shown",
                        cautions),
                viewports,
                List.of());
    }
}
