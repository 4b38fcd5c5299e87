package plumbleaf.jobfile.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.input.InputError;

/** What came of reading a job file: the job, or everything that is wrong with it. */
public sealed interface JobReading {
    <T> T match(Function<Good, T> good, Function<Bad, T> bad);

    /** The job, where the file holds one. */
    default Optional<Job> job() {
        return match(good -> Optional.of(good.is()), bad -> Optional.empty());
    }

    /** Everything that is wrong; nothing where the file is good. */
    default List<InputError> errors() {
        return match(good -> List.of(), Bad::all);
    }

    /**
     * A job without errors.
     *
     * @param gaps what a draft still lacks, each a cannot-say; runs and gates that lack something needed are not in the job
     */
    record Good(Job is, List<Finding> gaps) implements JobReading {
        public Good {
            gaps = List.copyOf(gaps);
        }

        @Override
        public <T> T match(Function<Good, T> good, Function<Bad, T> bad) {
            return good.apply(this);
        }
    }

    /** Everything wrong with the file, in the order of its lines. */
    record Bad(List<InputError> all) implements JobReading {
        public Bad {
            all = List.copyOf(all);
        }

        @Override
        public <T> T match(Function<Good, T> good, Function<Bad, T> bad) {
            return bad.apply(this);
        }
    }
}
