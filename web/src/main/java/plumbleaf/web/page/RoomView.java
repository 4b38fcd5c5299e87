package plumbleaf.web.page;

import java.util.List;

/**
 * One room of one job, ready to print.
 *
 * @param verdict  the whole job's word: {@code passes}, {@code open} or {@code fails}; empty before it is known
 * @param pictures the drawings, left and wide
 * @param panels   the numbers, right and narrow
 * @param links    what can be fetched
 * @param conflict someone else's change that came first; empty most of the time
 * @param problem  why the last change was not kept, where no field of this room shows it; empty most of the time
 */
public record RoomView(
        Room room,
        JobHead job,
        String verdict,
        List<Picture> pictures,
        List<Panel> panels,
        List<Link> links,
        List<Conflict> conflict,
        String problem) {
    public RoomView {
        pictures = List.copyOf(pictures);
        panels = List.copyOf(panels);
        links = List.copyOf(links);
        conflict = List.copyOf(conflict);
    }

    public RoomView withConflict(Conflict came) {
        return new RoomView(room, job, verdict, pictures, panels, links, List.of(came), problem);
    }

    /**
     * The job, as the thin bar names it.
     *
     * @param hand the hand sketch of the job's gate; empty before hinge and swing are said
     * @param handWords the same in words
     * @param metric whether lengths are shown and typed in millimeters
     */
    public record JobHead(
            String id,
            String title,
            long version,
            boolean undo,
            boolean redo,
            String hand,
            String handWords,
            boolean metric) {}

    /**
     * Two people changed one job.
     *
     * @param theirs what they did, and who
     * @param now    what the field holds since
     * @param mine   what was typed here
     */
    public record Conflict(String path, String unit, String theirs, String now, String mine) {}
}
