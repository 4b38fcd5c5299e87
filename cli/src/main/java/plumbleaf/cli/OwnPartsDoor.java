package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.jobfile.catalogue.OwnPartTables;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/** Tables of the user's own parts at the door: every bad row of every table, or all their parts. */
final class OwnPartsDoor {
    private OwnPartsDoor() {}

    static OwnParts read(List<Path> tables) {
        OwnParts parts = OwnParts.NONE;
        List<InputError> errors = new ArrayList<>();
        for (Path table : tables) {
            String text = new String(JobDoor.bytes(table), StandardCharsets.UTF_8).replace("\ufeff", "");
            OwnPartTables.Answer answer = OwnPartTables.read(String.valueOf(table.getFileName()), text);
            errors.addAll(answer.errors());
            parts = parts.plus(answer.parts());
        }
        if (!errors.isEmpty()) throw new BadInput(errors);
        return parts;
    }

    /** A job's tree with these tables beside those it has. */
    static Node into(Node job, OwnParts parts) {
        List<Node> tables = new ArrayList<>(NodePath.of("parts")
                .find(job)
                .flatMap(Node::asArray)
                .map(array -> array.items())
                .orElse(List.of()));
        for (OwnParts.Table table : parts.tables())
            tables.add(Json.object()
                    .put("file", table.file())
                    .put("rows", Json.list(table.rows(), Json::text))
                    .build());
        return NodePath.of("parts").set(job, Json.list(tables, is -> is));
    }
}
