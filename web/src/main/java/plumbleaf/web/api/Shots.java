package plumbleaf.web.api;

import java.util.List;
import java.util.Optional;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.web.room.Veil;

/** The shots of a job's text, as they stand there. */
final class Shots {
    private Shots() {}

    static List<Node> of(String document) {
        return JsonReader.read(Veil.json(document))
                .match(tree -> Optional.of(tree.root()), broken -> Optional.<Node>empty())
                .flatMap(Node::asObject)
                .flatMap(job -> job.get("ground"))
                .flatMap(Node::asObject)
                .flatMap(ground -> ground.get("shots"))
                .flatMap(Node::asArray)
                .map(Node.ArrayNode::items)
                .orElse(List.of());
    }
}
