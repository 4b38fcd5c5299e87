package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;

/** The closed leaf of a slide in the profile of its run, from its opening's face to its nose: its tail is behind the fence. */
public record SlideOnProfile(SlideSubject subject) {
    /** Where it is put on the paper of the profile. */
    interface Paper {
        Point at(double stationIn, double elevationIn);
    }

    String gate() {
        return subject.gate();
    }

    Length clear() {
        return subject.plan().shape().opening();
    }

    double middleStationIn() {
        return stationIn(clear().inches() / 2);
    }

    /** Along the run, from how far a place of the leaf is past the face of the front roller post. */
    private double stationIn(double rIn) {
        Post front = subject.front();
        double way = Math.signum(
                subject.receiver().station().inches() - front.station().inches());
        return front.station().inches() + way * (front.width().inches() / 2 + rIn);
    }

    List<Mark> marks(Paper paper) {
        List<Mark> marks = new ArrayList<>();
        double nose = subject.plan().shape().nose().inches();
        double low = subject.plan().leaf().outline().corners().get(1).z().inches();
        double high = subject.plan().leaf().outline().corners().get(2).z().inches();
        marks.add(Area.edged(
                List.of(at(paper, 0, low), at(paper, nose, low), at(paper, nose, high), at(paper, 0, high)),
                Material.GATE_FACE,
                Look.thin(Layer.PICKETS).of(subject.plan().leaf().id())));
        for (Member member : subject.plan().leaf().members()) member(marks, paper, member, nose);
        return marks;
    }

    private void member(List<Mark> marks, Paper paper, Member member, double nose) {
        double fromR = member.from().r().inches();
        double toR = member.to().r().inches();
        boolean rail = member.role() == MemberRole.BOTTOM_RAIL || member.role() == MemberRole.TOP_RAIL;
        if (!rail && Math.min(fromR, toR) < 0) return;
        double half = member.section().depth().inches() / 2;
        Look look = Look.visible(Layer.MEMBERS).as(LineKind.THIN).of(member.id());
        double fromZ = member.from().z().inches();
        double toZ = member.to().z().inches();
        if (rail) {
            for (double side : List.of(-half, half))
                marks.add(Stroke.line(at(paper, 0, fromZ + side), at(paper, nose, toZ + side), look));
            return;
        }
        double length = Math.hypot(toR - fromR, toZ - fromZ);
        double dr = -(toZ - fromZ) / length * half;
        double dz = (toR - fromR) / length * half;
        for (int side : List.of(-1, 1))
            marks.add(Stroke.line(
                    at(paper, fromR + side * dr, fromZ + side * dz),
                    at(paper, toR + side * dr, toZ + side * dz),
                    look));
    }

    private Point at(Paper paper, double rIn, double zIn) {
        return paper.at(stationIn(rIn), subject.plan().zero().inches() + zIn);
    }
}
