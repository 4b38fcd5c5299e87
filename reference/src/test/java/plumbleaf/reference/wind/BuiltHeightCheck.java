package plumbleaf.reference.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.WindWork;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/**
 * Wind on posts in the middle of 600 ft of solid fence, 6 ft high as asked, where a level top or steps build it taller or higher up.
 * Source: hand calculation by ASCE 7-16 26.10, 29.3.1 and Figure 29.3-1 Case A: q G = 20.77 psf at 115 mph in Exposure C up to 15 ft; Cf 1.30 for s/h = 1 and
 * 1.432 for s/h = 6/7, between 1.40 at 0.9 and 1.55 at 0.7; the resultant at 0.55 h of a fence down to the ground, at the middle of one that is not.
 * Tolerance: 0.1 %, the digits of the hand calculation.
 */
class BuiltHeightCheck {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final double ASD = 0.6;

    private static Design designed(String fit, String shots) {
        String text = """
                { "format": "plumbleaf-job", "version": 1, "title": "Gorse Bank", "date": "2027-04-19",
                  "site": { "wind": { "speed": "115 mph", "exposure": "C" },
                    "frost": { "depth": "24\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ SHOTS ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "600'" } ], "style": "wood-side-by-side", "infill": "6'",
                    "bottomGap": "0\\"", "fit": "FIT", "maxBay": "8' 1\\"" } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("FIT", fit).replace("SHOTS", shots);
        Job job = JobFile.read("job", text, CATALOGUE).job().orElseThrow();
        return Designs.of(
                job,
                CATALOGUE,
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                new ProvenCutPlanner());
    }

    private static String shot(int number, String station, String elevation) {
        return "{ \"id\": \"S" + number + "\", \"run\": \"R1\", \"station\": \"" + station + "'\", \"elevation\": \""
                + elevation + " in\" }";
    }

    /** Flat, then 3 ft down within 8 ft, and flat again. */
    private static final String TERRACE =
            shot(1, "0", "0") + "," + shot(2, "304", "0") + "," + shot(3, "312", "-36") + "," + shot(4, "600", "-36");

    private static final String ONE_IN_EIGHT = shot(1, "0", "0") + "," + shot(2, "600", "-900");

    private static WindWork windAt(Design design, double feet) {
        return design.posts().stream()
                .min(Comparator.comparingDouble(
                        post -> Math.abs(post.post().station().inFeet() - feet)))
                .flatMap(PostDesign::wind)
                .orElseThrow();
    }

    /** 27.0 psf: 0.6 * 27.0 * 6 * 3.3 ft = 320.6 lb-ft on each foot of fence; 9 ft high it is 1.5 squared of that, 721.4. */
    @Test
    void aLevelTopBendsItsPostsByTheSquareOfItsHeight() {
        Design design = designed("level-top", TERRACE);
        assertThat(perFoot(windAt(design, 152), 6)).isCloseTo(320.6, within(0.35));
        assertThat(perFoot(windAt(design, 448), 9)).isCloseTo(721.4, within(0.75));
        assertThat(windAt(design, 448).on().mean().psf()).isCloseTo(27.0, within(0.03));
        assertThat(windAt(design, 448).on().height().inFeet()).isCloseTo(0.55 * 9, within(1e-9));
    }

    private static double perFoot(WindWork wind, double heightFt) {
        return ASD * wind.on().momentAtGrade().inPoundFeet() / (wind.face().inSquareFeet() / heightFt);
    }

    /**
     * Bays of 8 ft on a fall of 1 in 8 hang 12 in. over their lower posts. Half of the bay uphill: 20.77 * 1.432 * 24 ft2 = 713.9 lb at 1 + 3 = 4 ft; half of the one
     * downhill: 27.0 * 24 = 648.0 lb at 3.3 ft. Together 0.6 (2,855.4 + 2,138.5) = 2,996 lb-ft.
     */
    @Test
    void aStepHangsOverItsLowerPost() {
        Design design = designed("stepped", ONE_IN_EIGHT);
        assertThat(design.layout().bays())
                .allSatisfy(bay -> assertThat(bay.level().inFeet()).isCloseTo(8, within(1e-9)));
        WindWork at = windAt(design, 304);
        assertThat(ASD * at.on().momentAtGrade().inPoundFeet()).isCloseTo(2996, within(3.0));
    }
}
