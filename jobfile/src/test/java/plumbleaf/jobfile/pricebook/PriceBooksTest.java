package plumbleaf.jobfile.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.OrderUnit;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.engine.takeoff.Truck;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.input.InputError;

class PriceBooksTest {
    private static final String MATERIALS =
            "item,name,supplier,unit,contents,of,least,price,taxed,waste_pct,weight_lb,date,source\n";

    @Test
    void theExampleBookPricesEverySectionOfTheCatalogueByTheStick() {
        PriceBook book = PriceBooks.standard("example-2027").orElseThrow();
        assertThat(book.labour()).isNotEmpty();
        assertThat(book.charges()).isNotEmpty();
        for (Section section : StandardCatalogue.load().sections()) {
            assertThat(book.of(section.id()))
                    .as(section.id())
                    .isNotEmpty()
                    .allMatch(sold -> sold.unit() == OrderUnit.STICK);
        }
        assertThat(PriceBooks.standard("nobody")).isEmpty();
    }

    @Test
    void everyBadCellIsNamedWithLineColumnAndCure() {
        List<InputError> errors = PriceBookTables.materials(
                        "mine.csv",
                        MATERIALS
                                + "screw,box of screws,Yard,crate,100,pieces,1,18.40,yes,5,2,2027-03-01,quote\n"
                                + "screw,box of screws,Yard,box,0,pieces,1,-3,maybe,5,2,March,quote\n")
                .errors();
        assertThat(errors)
                .extracting(InputError::text)
                .containsExactly(
                        "mine.csv:2: unit \"crate\": nothing is sold by this unit; write each, box, lb, stick, bag, yard, roll, pail, can or sheet",
                        "mine.csv:3: date \"March\": this is not a date; write year, month and day, like 2027-03-01",
                        "mine.csv:3: contents \"0\": this is not between 0.0001 and 100000; check the number and its unit",
                        "mine.csv:3: price \"-3\": this is not a number of zero or more; write a plain number, like 12.40",
                        "mine.csv:3: taxed \"maybe\": this is neither yes nor no; write yes or no");
        assertThat(errors.get(0).column()).isEqualTo(4);
    }

    @Test
    void anAmountThatNothingCostsIsRefusedInWords() {
        assertThat(PriceBookTables.house(
                                "house.csv",
                                "people,hourly,hours_per_day,cure_days,minimum,round_to,source\n2,48,8,3,1e97,1,x\n")
                        .errors())
                .extracting(InputError::text)
                .containsExactly(
                        "house.csv:2: minimum \"1e97\": this is more than anything costs; write at most 10000000");
    }

    @Test
    void aRowThatIsThereTwiceIsAnError() {
        String row = "screw,box of screws,Yard,box,100,pieces,1,18.40,yes,5,2,2027-03-01,quote\n";
        assertThat(PriceBookTables.materials("mine.csv", MATERIALS + row + row).errors())
                .extracting(InputError::text)
                .containsExactly(
                        "mine.csv:3: item \"screw\": this supplier sells it in this unit and size twice; keep the row that holds");
    }

    @Test
    void theTruckIsTheHousesAndAnOldTableSaysNothingOfIt() {
        String head = "people,hourly,hours_per_day,cure_days,minimum,round_to,source";
        House old = PriceBookTables.house("house.csv", head + "\n2,48,8,3,10,1,x\n")
                .rows()
                .get(0);
        assertThat(old.truck()).isEqualTo(Truck.USUAL);
        assertThat(old.truck().assumed()).isTrue();
        House said = PriceBookTables.house(
                        "house.csv", head + ",payload_lb,bed_ft,overhang_ft\n2,48,8,3,10,1,x,3200,12,3\n")
                .rows()
                .get(0);
        assertThat(said.truck()).isEqualTo(Truck.of(Force.pounds(3200), Length.feet(12), Length.feet(3)));
        assertThat(PriceBookTables.house("house.csv", head + ",payload_lb\n2,48,8,3,10,1,x,3200\n")
                        .errors())
                .extracting(InputError::text)
                .containsExactly(
                        "house.csv:2: bed_ft: a truck has payload_lb, bed_ft, overhang_ft, and this is missing; add the column",
                        "house.csv:2: overhang_ft: a truck has payload_lb, bed_ft, overhang_ft, and this is missing; add the column");
    }

    @Test
    void errorsOfAllTablesComeTogether() {
        PriceBooks.Answer answer = PriceBooks.read(
                "mine",
                new PriceBooks.Source("materials.csv", "item,name\n"),
                new PriceBooks.Source("labor.csv", ""),
                new PriceBooks.Source("charges.csv", "id,name,category,per,price,taxed,source\na,b,tolls,job,1,no,x\n"),
                new PriceBooks.Source(
                        "house.csv",
                        "people,hourly,hours_per_day,cure_days,minimum,round_to,source\n2.5,48,8,3,10.005,0,x\n"));
        assertThat(answer.book()).isEmpty();
        assertThat(answer.errors().stream().map(InputError::file).distinct())
                .containsExactly("materials.csv", "labor.csv", "charges.csv", "house.csv");
        assertThat(answer.errors().stream().map(InputError::text))
                .contains(
                        "house.csv:2: people \"2.5\": this is not a whole number; write a whole number",
                        "house.csv:2: minimum \"10.005\": an amount stops at the cent; write two places, like 950.00",
                        "house.csv:2: round_to \"0\": this is less than a cent; write at least 0.01");
    }

    @Test
    void aSoldRowCarriesItsSource() {
        Sold pipe = PriceBooks.standard("example-2027")
                .orElseThrow()
                .of("F1083-REG-2")
                .get(0);
        assertThat(pipe.source()).isEqualTo("invented for the examples");
        assertThat(pipe.contents()).isEqualTo(21);
    }
}
