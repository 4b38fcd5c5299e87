package plumbleaf.engine.job;

import java.util.List;

/**
 * Another way to build the job, as changes to its file. Each is designed and checked like the job itself.
 *
 * @param edits path and new value: {@code builds.G1.hingePost=F1083-REG-3}; an empty value takes it out
 */
public record OfferOption(String id, String name, OfferKind kind, List<String> edits) {
    public OfferOption {
        edits = List.copyOf(edits);
    }
}
