package plumbleaf.jobfile.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.OfferOption;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Node;

/**
 * Designs the options of a job. An option whose changes do not fit the job, or make it one that cannot be read, is told as an error at its place; the others go on.
 *
 * @param offered those that could be designed, in the order of the job
 */
public record Offers(List<Offered> offered, List<InputError> errors) {
    public Offers {
        offered = List.copyOf(offered);
        errors = List.copyOf(errors);
    }

    /**
     * @param base the job itself, designed
     * @param designer designs a job as the base was designed
     */
    public static Offers of(String file, Design base, Catalogue catalogue, Function<Job, Design> designer) {
        List<Offered> offered = new ArrayList<>();
        List<InputError> errors = new ArrayList<>();
        Node tree = JobFile.tree(base.job());
        List<OfferOption> options = base.job().money().offer().options();
        for (int i = 0; i < options.size(); i++) {
            OfferOption option = options.get(i);
            String field = "money.options[" + i + "]";
            job(file, tree, option, catalogue, field, errors).ifPresent(job -> {
                Design design = designer.apply(job);
                offered.add(new Offered(option, design, Difference.of(base, design)));
            });
        }
        return new Offers(offered, errors);
    }

    private static Optional<Job> job(
            String file, Node tree, OfferOption option, Catalogue catalogue, String field, List<InputError> errors) {
        List<JobEdit> edits = option.edits().stream()
                .flatMap(text -> JobEdit.read(text).value().stream())
                .toList();
        Parsed<Node> edited = JobEdit.all(tree, edits);
        return edited.match(
                read -> JobFile.read(file, read.is(), catalogue).match(good -> Optional.of(good.is()), bad -> {
                    for (InputError error : bad.all())
                        errors.add(InputError.ofFile(
                                file,
                                field + " " + option.id() + " makes a job that cannot be read: " + error.problem(),
                                error.cure()));
                    return Optional.<Job>empty();
                }),
                refused -> {
                    errors.add(InputError.ofFile(
                            file, field + " " + option.id() + ": " + refused.problem(), refused.cure()));
                    return Optional.empty();
                });
    }
}
