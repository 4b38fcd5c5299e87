package plumbleaf.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Laid;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.SetPost;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** What a hand sees while it moves a post is what the whole design makes of it, post for post and bay for bay. */
class LaidTest {
    private static final Standards STANDARDS = StandardTables.load().standards();
    private static final double MOVED_IN = 5;

    @ParameterizedTest
    @ValueSource(strings = {"kiln-yard.json", "nursery-lane-settled.json", "gannet-spit.json"})
    void aMovedPostIsLaidOutAsTheWholeDesignLaysItOut(String example) {
        Job job = new Edits(Path.of("..", "examples", example), 11).next();
        PriceBook book = PriceBooks.of(job).orElseThrow();
        Redesigner redesigner = new Redesigner(Yards.CATALOGUE, STANDARDS, new ProvenCutPlanner());
        Design before = redesigner.of(job, book);
        Post post = before.layout().posts().stream()
                .filter(one -> one.role() == PostRole.LINE)
                .findFirst()
                .orElseThrow();
        SetPost to = new SetPost(post.id(), Length.inches(post.station().inches() + MOVED_IN));

        Job moved = job.withRun(job.run(post.run()).withSet(to));
        Laid laid = redesigner.laid(before, moved);

        Design whole = Designs.of(moved, Yards.CATALOGUE, STANDARDS, book, new ProvenCutPlanner());
        assertThat(laid.layout()).isEqualTo(whole.layout()).isNotEqualTo(before.layout());
        assertThat(laid.drawnWith(before).posts()).isEqualTo(before.posts());
        // What it laid out is not remembered: the design after it is the same as before.
        assertThat(redesigner.of(job, book).layout()).isEqualTo(before.layout());
    }
}
