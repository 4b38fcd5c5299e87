package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What there is: nodes, members, springs to the ground, links and supports. Names are unique and every name used is a node's. */
public record FrameModel(
        List<Node> nodes,
        List<Member> members,
        List<GroundSpring> groundSprings,
        List<Link> links,
        List<Support> supports) {
    public FrameModel {
        nodes = List.copyOf(nodes);
        members = List.copyOf(members);
        groundSprings = List.copyOf(groundSprings);
        links = List.copyOf(links);
        supports = List.copyOf(supports);
        Map<String, Integer> index = new LinkedHashMap<>();
        for (Node node : nodes) once(index, node.id(), "node");
        Map<String, Integer> parts = new LinkedHashMap<>();
        for (Member member : members) {
            once(parts, member.id(), "member");
            known(index, member.start(), "member " + member.id());
            known(index, member.end(), "member " + member.id());
        }
        for (GroundSpring spring : groundSprings) {
            once(parts, spring.id(), "spring");
            known(index, spring.node(), "spring " + spring.id());
        }
        for (Link link : links) {
            once(parts, link.id(), "link");
            known(index, link.from(), "link " + link.id());
            known(index, link.to(), "link " + link.id());
        }
        for (Support support : supports) known(index, support.node(), "a support");
    }

    /** Members and supports alone. */
    public static FrameModel of(List<Node> nodes, List<Member> members, List<Support> supports) {
        return new FrameModel(nodes, members, List.of(), List.of(), supports);
    }

    public FrameModel with(GroundSpring spring) {
        return new FrameModel(nodes, members, joined(groundSprings, spring), links, supports);
    }

    public FrameModel with(Link link) {
        return new FrameModel(nodes, members, groundSprings, joined(links, link), supports);
    }

    public FrameModel with(Support support) {
        return new FrameModel(nodes, members, groundSprings, links, joined(supports, support));
    }

    private static <T> List<T> joined(List<T> some, T more) {
        List<T> all = new ArrayList<>(some);
        all.add(more);
        return all;
    }

    private static void once(Map<String, Integer> index, String id, String what) {
        if (index.putIfAbsent(id, index.size()) != null)
            throw new IllegalArgumentException("Two parts are called " + what + " " + id);
    }

    private static void known(Map<String, Integer> index, String node, String what) {
        if (!index.containsKey(node))
            throw new IllegalArgumentException("There is no node " + node + ", which " + what + " asks for");
    }
}
