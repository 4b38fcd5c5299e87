package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;

/**
 * All that a gate is worked out from, whatever its build, except what is sold, the standards and the ground: two gates with the same question have the same answer.
 *
 * @param job with nothing in it but this gate, its run, the site and the rules: {@link Job#ofGate}
 * @param near so much of its run's layout as its posts ask for
 * @param roller the rear roller post of a slide gate
 * @param beside bays of the fence next to the two posts, the first post's first
 */
record GateQuestion(
        Job job,
        RunLine line,
        RunLayout near,
        Post first,
        Post second,
        Optional<Post> roller,
        List<List<Bay>> beside,
        RunWind.Blowing wind) {
    GateQuestion {
        beside = List.copyOf(beside);
    }

    GateSite site(GroundUnder ground, RunWind blows, Catalogue catalogue, Standards standards) {
        Gate gate = job.gates().get(0);
        return new GateSite(
                job,
                job.run(gate.run()),
                gate,
                line,
                ground,
                first,
                second,
                roller,
                beside,
                near.bays(),
                blows,
                catalogue,
                standards);
    }

    PostWork posts(Catalogue catalogue, Standards standards) {
        return new PostWork(job, catalogue, standards, new Layout(List.of(near), List.of()));
    }
}
