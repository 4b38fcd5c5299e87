package plumbleaf.web.room;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Kept;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Stain;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.support.PostFeel;
import plumbleaf.engine.support.WallKind;
import plumbleaf.jobfile.survey.SurveyUnit;
import plumbleaf.web.page.Choice;

/** What a field may be, from the engine's own words and the catalogue. */
final class Choices {
    static final List<Choice> GATES = List.of(
            new Choice("swing", "one leaf that swings"),
            new Choice("pair", "a pair of leaves"),
            new Choice("slide", "a leaf that slides"));
    static final List<Choice> SIDES = words(Side.values(), Side::key);
    static final List<Choice> WAYS = words(SwingWay.values(), SwingWay::key);
    static final List<Choice> SHAPES =
            List.of(new Choice("square", "square"), new Choice("raked", "raked with the ground"));
    static final List<Choice> JOINTS = words(Joint.values(), Joint::key);
    static final List<Choice> SURVEY_UNITS = Arrays.stream(SurveyUnit.values())
            .map(unit -> new Choice(unit.key(), unit.words()))
            .toList();
    static final List<Choice> LINE_SUPPORTS = List.of(
            new Choice("core-socket", "a socket cored in a slab or wall"),
            new Choice("slab-plate", "a plate on a slab"),
            new Choice("driven", "driven"),
            new Choice("new-footing", "a footing"));
    static final List<Choice> PLUG_FATES =
            List.of(new Choice("leave", "stays in the ground"), new Choice("pull", "is pulled and hauled off"));
    static final List<Choice> KEPT = Arrays.stream(Kept.values())
            .map(kept -> new Choice(kept.key(), kept.words()))
            .toList();
    static final List<Choice> TEXTURES = words(Stain.Texture.values(), Stain.Texture::key);
    static final List<Choice> COATS =
            List.of(new Choice("0", "none"), new Choice("1", "one coat"), new Choice("2", "two coats"));
    static final List<Choice> FITS = words(Fit.values(), Fit::key);
    static final List<Choice> FACES = words(FinishedFace.values(), FinishedFace::key);
    static final List<Choice> TAPED = words(Taped.values(), Taped::key);
    static final List<Choice> BASES = words(DesignBasis.values(), DesignBasis::key);
    static final List<Choice> EXPOSURES = words(Exposure.values(), Exposure::key);
    static final List<Choice> SOILS = words(SoilKind.values(), SoilKind::key);
    static final List<Choice> STATES = words(SoilState.values(), SoilState::key);
    static final List<Choice> WALLS = words(WallKind.values(), WallKind::key);
    static final List<Choice> FEELS = words(PostFeel.values(), PostFeel::key);

    static final List<Choice> FROM = words(MeasuredFrom.values(), MeasuredFrom::key);
    static final List<Choice> CERTIFIED = List.of(
            new Choice("pins", "pins found"),
            new Choice("survey", "a survey"),
            new Choice("owner", "the owner, by word"));
    static final List<Choice> YES_NO = List.of(new Choice("yes", "yes"), new Choice("no", "no"));
    static final List<Choice> FLAGS = List.of(new Choice("true", "yes"));
    static final List<Choice> TRUE_FALSE = List.of(new Choice("true", "yes"), new Choice("false", "no"));

    /** Months as the job file writes them. */
    static final List<Choice> MONTHS = months();

    private Choices() {}

    /** The things of a list that have an id. */
    static List<Choice> ids(DocumentText text, String list) {
        return named(text, list, "id");
    }

    /** Locate tickets on file, by number. */
    static List<Choice> tickets(DocumentText text) {
        return named(text, "existing.tickets", "number");
    }

    private static List<Choice> named(DocumentText text, String list, String key) {
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < text.count(list); i++)
            text.value(list + "[" + i + "]." + key).ifPresent(name -> choices.add(new Choice(name, name)));
        return choices;
    }

    static List<Choice> styles(Catalogue catalogue) {
        return catalogue.styles().stream()
                .map(style -> new Choice(style.id(), style.name()))
                .toList();
    }

    static List<Choice> hinges(Catalogue catalogue) {
        return catalogue.hinges().stream()
                .map(hinge -> new Choice(hinge.id(), hinge.name()))
                .toList();
    }

    static List<Choice> latches(Catalogue catalogue) {
        return catalogue.latches().stream()
                .map(latch -> new Choice(latch.id(), latch.name()))
                .toList();
    }

    static List<Choice> rods(Catalogue catalogue) {
        return catalogue.rods().stream()
                .map(rod -> new Choice(rod.id(), rod.name()))
                .toList();
    }

    /** Tubes for a frame: square, rectangular and round, one inch and up. */
    static List<Choice> tubes(Catalogue catalogue) {
        return sections(
                catalogue,
                section -> section.depth().inches() >= 1
                        && section.depth().inches() <= 4
                        && !section.family().equals("picket"));
    }

    /** Whatever stands in the ground. */
    static List<Choice> posts(Catalogue catalogue) {
        return sections(catalogue, section -> !section.family().equals("picket"));
    }

    /** What a run's own posts may be of: steel or wood. */
    static List<Choice> linePosts(Catalogue catalogue) {
        List<Choice> choices = new ArrayList<>();
        for (WoodPost post : catalogue.woodPosts()) choices.add(new Choice(post.id(), "wood: " + post.name()));
        for (Choice steel : posts(catalogue)) choices.add(new Choice(steel.value(), "steel: " + steel.words()));
        return choices;
    }

    private static List<Choice> sections(Catalogue catalogue, Function<Section, Boolean> wanted) {
        List<Choice> choices = new ArrayList<>();
        for (Section section : catalogue.sections())
            if (wanted.apply(section)) choices.add(new Choice(section.id(), section.name()));
        return choices;
    }

    private static <T> List<Choice> words(T[] values, Function<T, String> key) {
        List<Choice> choices = new ArrayList<>();
        for (T value : values)
            choices.add(new Choice(key.apply(value), key.apply(value).replace('-', ' ')));
        return List.copyOf(choices);
    }

    private static List<Choice> months() {
        List<Choice> months = new ArrayList<>(List.of(new Choice("", "not said")));
        for (Month month : Month.values()) {
            String key = month.name().substring(0, 3).toLowerCase(Locale.ROOT);
            months.add(new Choice(key, month.getDisplayName(TextStyle.FULL, Locale.US)));
        }
        return List.copyOf(months);
    }
}
