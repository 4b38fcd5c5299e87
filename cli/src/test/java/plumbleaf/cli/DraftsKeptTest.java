package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/** Every verb that writes a job writes all of a draft: a run and a gate that are only begun, and whatever else it does not change. */
class DraftsKeptTest {
    @TempDir
    private Path folder = Path.of("");

    private Path draft = Path.of("");
    private Path out = Path.of("");

    @BeforeEach
    void begin() throws IOException {
        String nursery = Files.readString(Path.of("..", "examples", "nursery-lane.json"));
        String begun = nursery.replaceFirst("\\{", "{\n  \"draft\": true,")
                .replaceFirst("\"runs\": \\[", "\"runs\": [ { \"id\": \"R8\", \"style\": \"flat\" },")
                .replaceFirst("\"gates\": \\[", "\"gates\": [ { \"id\": \"G8\", \"opening\": \"5'\" },");
        assertThat(NodePath.of("gates[G8].opening").find(tree(begun))).isPresent();
        draft = Files.writeString(folder.resolve("draft.json"), begun);
        out = folder.resolve("out.json");
    }

    @Test
    void chooseKeepsThem() throws IOException {
        said(Terminal.run("choose", draft.toString(), "--out", out.toString()));
        keptAllBut("builds");
        assertThat(NodePath.of("builds.G1.hole").find(tree(Files.readString(out))))
                .isPresent();
    }

    @Test
    void shotsKeepThem() throws IOException {
        Path points = Files.writeString(folder.resolve("points.csv"), "901,10,20,1.5,corner\n");
        said(Terminal.run("shots", points.toString(), "--into", draft.toString(), "--out", out.toString()));
        keptAllBut("ground.shots");
        assertThat(Files.readString(out)).contains("\"corner\"");
    }

    @Test
    void partsKeepThem() throws IOException {
        Path table = Files.writeString(folder.resolve("hinges.csv"), """
                id,name,pin_offset_in,pin_swing_side_in,capacity_pair_lb,source
                OWN-H,Weld-on hinge,1.5,0.75,unknown,made in our shop
                """);
        said(Terminal.run("parts", table.toString(), "--into", draft.toString(), "--out", out.toString()));
        keptAllBut("parts");
        assertThat(Files.readString(out)).contains("OWN-H");
    }

    @Test
    void keptPricesKeepThem() throws IOException {
        said(Terminal.run("price", draft.toString(), "--keep", out.toString()));
        keptAllBut("money.kept");
        assertThat(NodePath.of("money.kept[0].price").find(tree(Files.readString(out))))
                .isPresent();
    }

    private static void said(Terminal run) {
        assertThat(run.errorLines()).isEmpty();
        assertThat(run.out()).contains("Wrote ");
    }

    private void keptAllBut(String changed) throws IOException {
        Node before = tree(Files.readString(draft));
        Node after = tree(Files.readString(out));
        for (String begun : List.of("runs[R8]", "gates[G8]"))
            assertThat(NodePath.of(begun).find(after)).as(begun).isPresent();
        assertThat(without(after, changed)).isEqualTo(without(before, changed));
    }

    private static String without(Node root, String path) {
        return JsonWriter.write(
                NodePath.of(path).find(root).isPresent() ? NodePath.of(path).remove(root) : root);
    }

    private static Node tree(String text) {
        return JsonReader.read(text).match(tree -> tree.root(), broken -> {
            throw new AssertionError(broken + "\n" + text);
        });
    }
}
