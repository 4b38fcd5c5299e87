package plumbleaf.documents.packet;

import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.SitePlan;

/** The site plan as a picture among words, as high as it must be to be read. */
final class PlanPicture {
    private static final double HIGH_IN = 4.4;

    /** Its words keep their size and take most of a small picture: lower than this, a farm is a blot among them. */
    private static final double OF_A_LARGE_SITE_HIGH_IN = 6.8;

    private PlanPicture() {}

    static Drawing of(PacketSubject subject) {
        Drawing plan = fitted(subject, HIGH_IN);
        return SitePlan.crowds(subject.site(), plan.scale()) ? fitted(subject, OF_A_LARGE_SITE_HIGH_IN) : plan;
    }

    private static Drawing fitted(PacketSubject subject, double highIn) {
        return Scale.fitted(
                subject.units(),
                scale -> SitePlan.of(subject.site().unshot(), scale),
                Pages.columnWidth(subject.options().size()),
                highIn);
    }
}
