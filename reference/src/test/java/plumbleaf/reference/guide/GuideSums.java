package plumbleaf.reference.guide;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.footing.FallingGround;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PoleDepth;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.RiskCategory;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.VelocityPressure;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WallWind;
import plumbleaf.engine.wind.WindTables;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.ResultFile;

/** The guide's figures by name: sums with the engine's own formulas, and places in the results of the example jobs. */
final class GuideSums {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final WindTables WIND = StandardTables.load().wind();
    private static final Map<String, DoubleSupplier> SUMS = sums();
    private static final Map<String, Node> RESULTS = new TreeMap<>();

    private GuideSums() {}

    static Set<String> names() {
        return SUMS.keySet();
    }

    static double valueOf(String name) throws IOException {
        int colon = name.indexOf(':');
        if (colon >= 0) return inResult(name.substring(0, colon), name.substring(colon + 1));
        DoubleSupplier sum = SUMS.get(name);
        if (sum == null) throw new IllegalArgumentException("The guide names " + name + ", which nobody works out");
        return sum.getAsDouble();
    }

    private static Map<String, DoubleSupplier> sums() {
        Map<String, DoubleSupplier> sums = new TreeMap<>();
        sums.put(
                "ground.slopeTape",
                () -> slope().levelLength(Length.ZERO, Length.feet(100)).inFeet());
        sums.put(
                "wind.pressure",
                () -> VelocityPressure.at(openCountry(), Length.feet(6), WIND).psf());
        sums.put("wind.postPsf", () -> insidePost().mean().psf());
        sums.put("wind.postForce", () -> insidePost().force().times(0.6).pounds());
        sums.put("wind.postMoment", () -> 0.6 * insidePost().momentAtGrade().inPoundFeet());
        sums.put("footing.codeDepth", () -> codeDepth().inFeet());
        sums.put(
                "footing.momentDepth",
                () -> PoleDepth.nonconstrained(Force.ZERO, Moment.poundFeet(340), Pressure.psf(300), Length.feet(1))
                        .inFeet());
        sums.put("footing.turn", () -> turn(36));
        sums.put("footing.turnDeeper", () -> turn(42));
        sums.put("footing.fall25", () -> FallingGround.factor(Slope.percent(25), 30));
        sums.put(
                "strength.post",
                () -> TubeStrength.of(CATALOGUE.section("F1083-REG-2").orElseThrow())
                        .allowableX()
                        .inPoundFeet());
        return sums;
    }

    private static Profile slope() {
        return new Profile(
                "R1",
                List.of(
                        new ProfilePoint("S1", new Offset(0), new Offset(0)),
                        new ProfilePoint("S2", new Offset(3000), new Offset(600))));
    }

    private static SiteWind openCountry() {
        return new SiteWind(Speed.mph(115), Exposure.C, WindEdition.ASCE_7_16, RiskCategory.I, 1, 1);
    }

    /** An inside post of a long solid fence, 6 ft down to grade, in 8 ft bays. */
    private static TributaryWind insidePost() {
        WallStretch fence = new WallStretch(
                Length.feet(600), Length.feet(6), Length.feet(6), Screen.flat(1), Length.ZERO, Length.ZERO);
        return WallWind.of(openCountry(), fence, WIND).over(Length.feet(296), Length.feet(304));
    }

    /** The same post in a 10 in. hole, class 4 ground doubled. */
    private static Length codeDepth() {
        TributaryWind post = insidePost();
        return PoleDepth.nonconstrained(
                post.force().times(0.6), post.momentAtGrade().times(0.6), Pressure.psf(300), Length.inches(10));
    }

    private static double turn(double depthIn) {
        return new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3))
                .spring(new HoleSize(Length.inches(12), Length.inches(depthIn)))
                .under(Force.ZERO, Moment.poundFeet(220))
                .turn()
                .inDegrees();
    }

    private static double inResult(String job, String path) throws IOException {
        Node result = RESULTS.get(job);
        if (result == null) {
            result = design(job);
            RESULTS.put(job, result);
        }
        Node node = NodePath.of(path)
                .find(result)
                .orElseThrow(() -> new IllegalArgumentException("No " + path + " in the result of " + job));
        return Double.parseDouble(node.asNumber().or(node::asText).orElseThrow());
    }

    private static Node design(String name) throws IOException {
        String text = Files.readString(Path.of("..", "examples", name + ".json"), StandardCharsets.UTF_8);
        Job job = JobFile.read(name, text, CATALOGUE).job().orElseThrow();
        return ResultFile.tree(Designs.of(
                job,
                CATALOGUE,
                StandardTables.load().standards(),
                PriceBooks.standard("example-2027").orElseThrow(),
                new ProvenCutPlanner()));
    }
}
