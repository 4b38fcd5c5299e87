package plumbleaf.documents.packet;

/** Whether anything of a job is of wood: then its papers say how wood moves and when it is stained. */
final class WoodParts {
    private WoodParts() {}

    static boolean inLeaves(PacketSubject subject) {
        return subject.gates().stream()
                .flatMap(gate -> gate.leaves().stream())
                .anyMatch(leaf -> !leaf.leaf().nailers().isEmpty());
    }

    static boolean anywhere(PacketSubject subject) {
        boolean posts =
                subject.checked().stream().anyMatch(post -> post.section().match(steel -> false, wood -> true));
        boolean fence = subject.layout().runs().stream()
                .flatMap(run -> run.style().stream())
                .anyMatch(style -> style.infill()
                        .match(
                                up -> true,
                                both -> true,
                                lying -> true,
                                panel -> false,
                                fabric -> false,
                                mesh -> false));
        return posts || fence || inLeaves(subject);
    }
}
