package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.documents.PaperKind;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PacketPaper;

/**
 * Which papers go into the packet of a job and in what order. On a screen each has a place, {@code packet[proposal]}, from 1; emptied it is
 * left out.
 *
 * @param in     in the packet's order
 * @param out    papers of the job that its packet leaves out
 * @param absent what the job has no paper of now, and would take in
 */
record PacketOrder(List<PacketPaper> in, List<PacketPaper> out, List<PacketPaper> absent) {
    private static final Pattern PLACE = Pattern.compile("packet\\[([a-z-]{1,20})]");

    PacketOrder {
        in = List.copyOf(in);
        out = List.copyOf(out);
        absent = List.copyOf(absent);
    }

    /** @param files of the papers there are, by name */
    static PacketOrder of(Job job, List<String> files) {
        Set<PacketPaper> there = new LinkedHashSet<>();
        for (PacketPaper paper : PacketPaper.values())
            if (files.stream().anyMatch(file -> isOf(file, paper))) there.add(paper);
        List<PacketPaper> wanted = job.packet().isEmpty() ? List.of(PacketPaper.values()) : job.packet();
        List<PacketPaper> in = wanted.stream().filter(there::contains).toList();
        return new PacketOrder(
                in.isEmpty() ? List.copyOf(there) : in,
                in.isEmpty()
                        ? List.of()
                        : there.stream().filter(paper -> !in.contains(paper)).toList(),
                wanted.stream().filter(paper -> !there.contains(paper)).toList());
    }

    static boolean isOf(String file, PacketPaper paper) {
        return file.endsWith(".pdf")
                && PaperKind.of(file).filter(kind -> kind.isOf(paper)).isPresent();
    }

    static String path(PacketPaper paper) {
        return "packet[" + paper.key() + "]";
    }

    static String title(PacketPaper paper) {
        return List.of(PaperKind.values()).stream()
                .filter(kind -> kind.isOf(paper))
                .map(PaperKind::title)
                .findFirst()
                .orElse(paper.key());
    }

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    /** Where a paper stands; empty where it is left out. */
    String place(String path) {
        for (int i = 0; i < in.size(); i++) if (path(in.get(i)).equals(path)) return Integer.toString(i + 1);
        return "";
    }

    /** With a paper in another place; nothing where no paper or no place is meant. */
    Optional<PacketOrder> with(String path, String place) {
        Matcher said = PLACE.matcher(path);
        if (!said.matches() || !(place.isBlank() || place.strip().matches("\\d{1,3}"))) return Optional.empty();
        List<PacketPaper> all = new ArrayList<>(in);
        all.addAll(out);
        return all.stream()
                .filter(paper -> paper.key().equals(said.group(1)))
                .findFirst()
                .map(paper -> moved(paper, place.strip()));
    }

    private PacketOrder moved(PacketPaper paper, String place) {
        List<PacketPaper> order = new ArrayList<>(in);
        List<PacketPaper> rest = new ArrayList<>(out);
        order.remove(paper);
        rest.remove(paper);
        if (place.isEmpty()) rest.add(paper);
        else order.add(Math.max(0, Math.min(order.size(), Integer.parseInt(place) - 1)), paper);
        return new PacketOrder(order, rest, absent);
    }

    /** As the job file has it: no list where the packet is the usual one, or nothing would be left in it. */
    DocumentText on(DocumentText text) {
        List<PacketPaper> usual = new ArrayList<>(List.of(PacketPaper.values()));
        usual.removeAll(absent);
        if (in.isEmpty() || in.equals(usual)) return text.without("packet");
        List<PacketPaper> kept = new ArrayList<>(in);
        kept.addAll(absent);
        return text.with(
                "packet",
                "["
                        + String.join(
                                ", ",
                                kept.stream()
                                        .map(paper -> DocumentText.quoted(paper.key()))
                                        .toList())
                        + "]");
    }
}
