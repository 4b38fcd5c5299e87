package plumbleaf.jobfile.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.section.Section;
import plumbleaf.jobfile.input.InputError;

/** A user's own tables. */
class OwnPartTablesTest {
    @Test
    void aHingeWithoutARatingIsUnknown() {
        OwnPartTables.Answer answer = OwnPartTables.read(
                "maker.csv",
                "id,name,pin_offset_in,source\nOWN-1,\"strap, long\",0.5,sheet 14\nOWN-2,other,0.75,sheet 15\n");
        assertThat(answer.errors()).isEmpty();
        HingeModel hinge = answer.parts().hinges().get(0);
        assertThat(hinge.name()).isEqualTo("strap, long");
        assertThat(hinge.capacityPerPair().isZero()).isTrue();
        assertThat(hinge.pinOffset().inches()).isEqualTo(0.5);
        assertThat(answer.parts().ids()).containsExactly("OWN-1", "OWN-2");
        assertThat(answer.parts().tables().get(0).rows()).hasSize(3);
    }

    @Test
    void everyBadRowIsNamed() {
        OwnPartTables.Answer answer = OwnPartTables.read(
                "latches.csv", "id,name,holds_lb,source\nL1,one,lots,sheet\nL2,two,500,sheet\nL3,,600,sheet\n");
        assertThat(answer.errors())
                .extracting(InputError::text)
                .containsExactly(
                        "latches.csv:2: holds_lb \"lots\": this is not a number; write a plain number, like 2.375",
                        "latches.csv:4: name: this cell is empty; fill it in");
        assertThat(answer.parts().isEmpty()).isTrue();
    }

    /** A pipe of 2.375 x 0.154: A = pi (2.375 - 0.154) 0.154 = 1.075 in2, 3.66 lb a foot. */
    @Test
    void aPipeIsWorkedOutFromItsSize() {
        OwnPartTables.Answer answer = OwnPartTables.read("pipe.csv", """
                id,name,shape,depth_in,width_in,wall_in,yield_ksi,ultimate_ksi,source
                OWN-2,our pipe,round,2.375,2.375,0.154,50,60,mill sheet
                """);
        Section pipe = answer.parts().sections().get(0);
        assertThat(pipe.areaIn2()).isCloseTo(1.0745, within(0.0005));
        assertThat(pipe.weightPerFoot().pounds()).isCloseTo(3.66, within(0.01));
        assertThat(pipe.designWall().inches()).isCloseTo(0.93 * 0.154, within(1e-12));
    }

    /** What a rod's sheet leaves out is taken as written: guides 1/16 in. over, a sleeve a quarter inch over the bar. */
    @Test
    void aRodAndASetOfRollersMayLeaveOutWhatTheirSheetDoes() {
        RodModel rod = OwnPartTables.read(
                        "rod.csv", "id,name,diameter_in,yield_psi,source\nR1,bar,0.75,50000,sheet 3\n")
                .parts()
                .rods()
                .get(0);
        assertThat(rod.sleeve().inches()).isEqualTo(1);
        assertThat(rod.playEachWay().inches()).isCloseTo((0.0625 + 0.25) / 2, within(1e-12));
        RollerModel rollers = OwnPartTables.read("rollers.csv", "id,name,standoff_in,source\nW1,wheels,3,sheet 4\n")
                .parts()
                .rollers()
                .get(0);
        assertThat(rollers.capacity().isZero()).isTrue();
    }

    @Test
    void aTableOfNothingWeKnowSaysWhatToWrite() {
        assertThat(OwnPartTables.read("x.csv", "id,name\nA,B\n").errors())
                .extracting(InputError::text)
                .containsExactly(
                        "x.csv: no heading tells what these parts are; a hinge has pin_offset_in, a latch holds_lb,"
                                + " a rod yield_psi, a set of rollers standoff_in, a tube or post wall_in");
    }
}
