package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.DecimalText;

/**
 * Posts of one section that stand in one way, in holes of one size: worked out once, at the hardest worked of them.
 *
 * @param posts the hardest worked first
 */
record AlikePosts(List<PostDesign> posts) {
    private static final int ACROSS = 6;

    AlikePosts {
        posts = List.copyOf(posts);
    }

    /** All posts of a job in their groups; a post whose support has numbers of its own stands alone. */
    static List<AlikePosts> of(List<PostDesign> all) {
        Map<String, List<PostDesign>> groups = new LinkedHashMap<>();
        for (PostDesign post : all) {
            String own = post.held().facts().isEmpty() ? "" : post.id();
            String key = post.section().id() + "|" + post.hole().inches() + "|"
                    + post.depth().inches() + "|" + post.wind().isPresent() + "|" + own;
            groups.computeIfAbsent(key, none -> new ArrayList<>()).add(post);
        }
        List<AlikePosts> alike = new ArrayList<>();
        for (List<PostDesign> group : groups.values()) {
            List<PostDesign> hardest = new ArrayList<>(group);
            hardest.sort(Comparator.comparingDouble((PostDesign post) -> -post.utilisation()));
            alike.add(new AlikePosts(hardest));
        }
        return List.copyOf(alike);
    }

    PostDesign hardest() {
        return posts.get(0);
    }

    /** {@code P4 and 11 alike}. */
    String words() {
        int others = posts.size() - 1;
        return others == 0 ? hardest().id() : hardest().id() + " and " + others + " alike";
    }

    /** How much each of the others uses, in the order of the walk, several in a row. */
    Table others() {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < ACROSS; i++) {
            columns.add(Column.left("Post"));
            columns.add(Column.right("Used"));
        }
        List<PostDesign> walk = new ArrayList<>(posts.subList(1, posts.size()));
        walk.sort(Comparator.comparingInt(AlikePosts::number).thenComparing(PostDesign::id));
        Table.Builder table = Table.with(columns.toArray(Column[]::new));
        for (int from = 0; from < walk.size(); from += ACROSS) {
            List<String> cells = new ArrayList<>();
            for (int i = from; i < from + ACROSS; i++) {
                cells.add(i < walk.size() ? walk.get(i).id() : "");
                cells.add(i < walk.size() ? used(walk.get(i)) : "");
            }
            table.row(cells.toArray(String[]::new));
        }
        return table.table();
    }

    static String used(PostDesign post) {
        return post.utilisation() > 0 ? DecimalText.fixed(post.utilisation(), 2) : "not said";
    }

    /** {@code P7a} stands where 7 does. */
    private static int number(PostDesign post) {
        String digits = post.id().replaceAll("[^0-9]", "");
        return digits.isEmpty() ? 0 : Integer.parseInt(digits);
    }
}
