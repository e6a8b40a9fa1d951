package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureNames.Named;
import crowdline.flight.FigureNames.Side;
import crowdline.flight.body.Rig;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FigureNamesTest {
    private static List<String> names(Named... figures) {
        Map<String, String> names = FigureNames.of(List.of(figures));
        return List.of(figures).stream()
                .map(f -> names.getOrDefault(f.id(), "?"))
                .toList();
    }

    private static Named at(int number, String name, Side side) {
        return new Named("f" + number, name, side);
    }

    @Test
    void aNameThatOnlyOneFigureHasStaysAsItIs() {
        assertThat(names(at(1, "loop", Side.LEFT), at(2, "high loop", Side.RIGHT), at(3, "landing", Side.UNKNOWN)))
                .containsExactly("loop", "high loop", "landing");
    }

    @Test
    void twoOfOneNameSayWhereTheyAre() {
        assertThat(names(at(1, "loop", Side.LEFT), at(2, "spin", Side.LEFT), at(3, "Loop", Side.CENTRE)))
                .containsExactly("loop, left", "spin", "Loop, centre");
    }

    @Test
    void theWayToTheNextFigureKeepsItsNameHoweverOftenItIsFlown() {
        assertThat(names(
                        new Named("f1", "turning back", Side.LEFT, true),
                        at(2, "turning back", Side.LEFT),
                        new Named("f3", "turning back", Side.LEFT, true)))
                .containsExactly("turning back", "turning back", "turning back");
    }

    @Test
    void whereThePlaceTellsNothingApartTheyAreCounted() {
        assertThat(names(at(1, "loop", Side.CENTRE), at(2, "loop", Side.RIGHT), at(3, "loop", Side.CENTRE)))
                .containsExactly("loop, centre, first", "loop, right", "loop, centre, second");
    }

    @Test
    void aFigureThatIsOnlyTimedIsCountedAmongAllOfItsName() {
        assertThat(names(at(1, "low pass", Side.CENTRE), at(2, "low pass", Side.UNKNOWN)))
                .containsExactly("low pass, centre", "low pass, second");
        assertThat(names(at(1, "low pass", Side.UNKNOWN), at(2, "low-pass", Side.UNKNOWN)))
                .containsExactly("low pass, first", "low-pass, second");
    }

    @Test
    void aPlacedNameThatAnotherFigureHasAlreadyIsCountedToo() {
        assertThat(names(at(1, "loop", Side.LEFT), at(2, "loop", Side.RIGHT), at(3, "Loop, left", Side.LEFT)))
                .containsExactly("loop, left, first", "loop, right", "Loop, left");
    }

    @Test
    void noTwoOfThirtyAreCalledTheSame() {
        List<Named> many = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            many.add(at(i, "turning back", List.of(Side.values()).get(i % 4)));
        }
        assertThat(FigureNames.of(many).values()).hasSize(30).doesNotHaveDuplicates();
    }

    @Test
    void afterTheTwelfthTheyAreCountedInFigures() {
        Named[] passes = new Named[24];
        for (int i = 0; i < passes.length; i++) {
            passes[i] = at(i, "pass", Side.UNKNOWN);
        }
        assertThat(names(passes))
                .contains("pass, twelfth", "pass, 13th", "pass, 21st", "pass, 22nd", "pass, 23rd", "pass, 24th");
    }

    @Test
    void aPredictedFlightTellsItsFiguresApart() {
        assertThat(names(flight(0, line("a", -400), line("b", -60), line("c", 0), "timed", line("e", 400))))
                .containsExactly(
                        "line, left", "line, centre, first", "line, centre, second", "line, fourth", "line, right");
    }

    @Test
    void theFurtherAwayTheMoreOfTheLineIsTheCentre() {
        assertThat(names(flight(2000, line("a", -400), line("b", 1800))))
                .containsExactly("line, centre", "line, right");
    }

    private static List<String> names(Flight flight) {
        return flight.figures().stream()
                .filter(f -> !f.name().startsWith("to "))
                .map(FigureFlight::name)
                .toList();
    }

    /** A line of 100 m whose middle is so far to the right of the datum. */
    private record Line(String id, double alongM) {}

    private static Line line(String id, double alongM) {
        return new Line(id, alongM);
    }

    /** Each line after a way there that is only timed, or a line that is only timed. */
    private static Flight flight(double awayM, Object... lines) {
        List<Figure> figures = new ArrayList<>();
        for (Object each : lines) {
            if (each instanceof Line line) {
                Placing there = new Placing(line.alongM() - 50, awayM, 1000, 120, Placing.Heading.RIGHT);
                figures.add(figure("to-" + line.id(), "to " + line.id(), null, 5.0, there));
                figures.add(figure(line.id(), "line", List.of(Rig.line(Element.Until.METRES, 100)), null, null));
            } else {
                figures.add(figure("d", "line", null, 5.0, null));
            }
        }
        return Rig.predictor(new Catalogue(List.of()), 1000, 120, figures.toArray(Figure[]::new))
                .predict();
    }

    private static Figure figure(
            String id,
            String name,
            @Nullable List<Element> elements,
            @Nullable Double durationS,
            @Nullable Placing exit) {
        return new Figure(id, name, null, null, elements, durationS, exit, null, List.of(), List.of());
    }
}
