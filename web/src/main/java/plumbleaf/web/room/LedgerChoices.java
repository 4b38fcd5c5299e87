package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbleaf.engine.job.ComplaintCause;
import plumbleaf.engine.job.NoticeFrom;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.web.page.Choice;

/** What can be picked for a blank of something written down: the job's own things, what the catalogue has, fixed words. */
final class LedgerChoices {
    private static final List<Choice> CAUSES = causes();
    private static final List<Choice> COUNTED = Arrays.stream(NoticeFrom.values())
            .map(from -> new Choice(from.key(), from.words()))
            .toList();
    private static final List<Choice> OFFERS = List.of(
            new Choice(OfferKind.EXTRA.key(), "something to tick beside the rest"),
            new Choice(OfferKind.BUILD.key(), "another build of the whole job"));

    private LedgerChoices() {}

    static List<Choice> of(Ledger ledger, Blank blank, Opened opened) {
        return switch (ledger) {
            case CALL -> CAUSES;
            case NOTICE -> COUNTED;
            case OPTION -> OFFERS;
            case HOURS ->
                opened.design().stream()
                        .flatMap(design -> design.quote().labour().tasks().stream())
                        .map(task -> new Choice(
                                task.rate().task(),
                                task.rate().name() + ", by the " + task.rate().per()))
                        .toList();
            case USED ->
                opened.design().stream()
                        .flatMap(design -> design.quote().takeoff().lines().stream())
                        .map(line -> new Choice(line.item(), line.sold().name()))
                        .toList();
            case ALLOWANCE ->
                opened.design().stream()
                        .flatMap(design -> design.quote().price().unitOffers().stream())
                        .map(offer -> new Choice(offer.charge(), offer.name()))
                        .toList();
            case RUN ->
                blank.key().equals("style") ? Choices.styles(opened.catalogue()) : Choices.ids(opened.text(), "runs");
            case GATE ->
                switch (blank.key()) {
                    case "kind" -> Choices.GATES;
                    case "run" -> Choices.ids(opened.text(), "runs");
                    case "swing" -> Choices.WAYS;
                    default -> Choices.SIDES;
                };
            case NO_DIG -> Choices.tickets(opened.text());
            case RELEASE -> Choices.FLAGS;
            case FIT_PART -> Choices.FITS;
            case OTHER_POSTS -> Choices.LINE_SUPPORTS;
            case SIDE -> blank.key().equals("basis") ? Choices.BASES : Choices.linePosts(opened.catalogue());
            case PLUG -> blank.key().equals("fate") ? Choices.PLUG_FATES : Choices.ids(opened.text(), "runs");
            case KEEPS -> Choices.KEPT;
            case GUARD -> blank.key().equals("run") ? Choices.ids(opened.text(), "runs") : Choices.YES_NO;
            case OLD_FENCE ->
                switch (blank.key()) {
                    case "plugs" -> Choices.PLUG_FATES;
                    case "run" -> Choices.ids(opened.text(), "runs");
                    default -> Choices.FLAGS;
                };
            case HEIGHT_RULE -> Choices.FROM;
            case LOT_LINE -> Choices.CERTIFIED;
            case ACCESSIBLE, POOL_GATE -> answers(blank, opened);
            case POOL_RUN, HARD_GROUND, CLIMBABLE, PRIVATE_LINE, LATER -> Choices.ids(opened.text(), "runs");
            case SHOT -> ofShot(blank, opened);
            case SETUP -> marks(opened);
            case POINT_FILE -> Choices.SURVEY_UNITS;
            case BILL,
                    PAID,
                    MEASURED,
                    SUBMITTAL,
                    CHANGE,
                    MOISTURE,
                    PART,
                    OWN_HINGE,
                    OWN_LATCH,
                    OWN_ROD,
                    OWN_ROLLER,
                    OWN_TUBE,
                    LEG,
                    OWN_STYLES,
                    CHECK_TAPE,
                    SIGHT,
                    BUILDING,
                    OVERNIGHT,
                    TICKET,
                    OBSTACLE,
                    AS_SET,
                    BREAKLINE -> List.of();
        };
    }

    private static List<Choice> ofShot(Blank blank, Opened opened) {
        return switch (blank.key()) {
            case "setup" -> Choices.ids(opened.text(), "ground.setups");
            case "tapes.side" -> Choices.SIDES;
            case "run" -> Choices.ids(opened.text(), "runs");
            default -> Choices.ids(opened.text(), "ground.shots");
        };
    }

    private static List<Choice> answers(Blank blank, Opened opened) {
        if (blank.key().equals("gate")) return Choices.ids(opened.text(), "gates");
        return blank.kind() == Blank.Kind.YES ? Choices.FLAGS : Choices.YES_NO;
    }

    /** What a backsight can be read on. */
    private static List<Choice> marks(Opened opened) {
        List<Choice> marks = new ArrayList<>(List.of(new Choice("benchmark", "benchmark")));
        marks.addAll(Choices.ids(opened.text(), "ground.shots"));
        return marks;
    }

    private static List<Choice> causes() {
        List<Choice> choices = new ArrayList<>();
        for (ComplaintCause cause : ComplaintCause.values()) choices.add(new Choice(cause.key(), cause.words()));
        return choices;
    }
}
