package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.material.WoodSpecies;

/** What the drawings are of, put together from a design and the catalogue. */
record Subjects(Design design, Catalogue catalogue) {
    /** A gate with one leaf that was worked out. */
    Optional<GateSubject> of(GateDesign gate) {
        if (gate.plan().leaves().isEmpty()) return Optional.empty();
        Optional<Post> hinge = post(gate.hingePost());
        Optional<Post> latch = post(gate.latchPost());
        if (hinge.isEmpty() || latch.isEmpty()) return Optional.empty();
        return Optional.of(new GateSubject(
                gate.plan(),
                parts(gate),
                gate.hingePost(),
                gate.latchPost(),
                hinge.get().top().minus(gate.plan().pinElevation()),
                latch.get().top().minus(gate.plan().pinElevation()),
                gate.asked().latch().height(),
                design.job().display()));
    }

    private GateParts parts(GateDesign gate) {
        PickedGate build = gate.build();
        Gate asked = gate.asked();
        return new GateParts(
                build.frame(),
                build.braces(),
                build.joint(),
                build.hingePost(),
                build.latchPost(),
                catalogue.hinge(asked.hinges().model()).orElseThrow(),
                catalogue.latch(asked.latch().model()).orElseThrow(),
                cladding(design.job().run(asked.run())));
    }

    private Cladding cladding(Run run) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        if (style.isEmpty()) return new Cladding.Open();
        return new Cladding.Wood(
                style.get(), wood(style.get().species()), wood(style.get().railSpecies()), run.finishedFace());
    }

    private WoodSpecies wood(String id) {
        return catalogue.species(id).orElseThrow();
    }

    List<PostDetail> posts(RunLayout run) {
        List<PostDetail> details = new ArrayList<>();
        return details;
    }

    private Optional<Post> post(String id) {
        for (RunLayout run : design.layout().runs())
            for (Post post : run.posts()) if (post.id().equals(id)) return Optional.of(post);
        return Optional.empty();
    }
}
