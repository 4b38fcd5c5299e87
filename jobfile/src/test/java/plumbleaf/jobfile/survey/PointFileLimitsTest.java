package plumbleaf.jobfile.survey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;

class PointFileLimitsTest {
    @Test
    void aSlipOfManyDigitsIsNamedAndTheRestIsRead() {
        PointFile read = PointFile.read(
                "points.csv",
                "1,0,0,0\n2,123456789012345678901234,5,1\n3,5,5,99999999999999999999\n4,32808398.5,0,0\n",
                PointFile.Said.NOTHING);
        assertThat(read.errors())
                .extracting(InputError::text)
                .anySatisfy(text -> assertThat(text)
                        .contains(
                                "points.csv", "2", "no grid reaches so far; check the digits, the order and the units"))
                .anySatisfy(text -> assertThat(text).contains("no grid reaches so far"))
                .hasSize(3);
        assertThat(read.shots()).hasSize(1);
    }
}
