package crowdline.edit.act;

import crowdline.edit.Change;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Incident;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Shows to edit in tests, and what one wants to see of them. */
final class Edited {
    static final Catalogue CATALOGUE = CatalogueFile.shipped();
    static final String LIST =
            "take-off\nloop left end at 600 ft\nstall turn\nslow roll\nspin 2 turns\nlow pass\nlanding";

    private Edited() {}

    static Show empty() {
        return crowdline.arrange.ShowArranging.empty(
                "A day",
                LocalDate.of(2027, 5, 2),
                ZoneOffset.UTC,
                new Incident("the director, 2 May", List.of("stop"), List.of("Please wait."), List.of()));
    }

    static AddAct adding(double talk) {
        return new AddAct(CATALOGUE, new FirstDraft(CATALOGUE, Pace.DEFAULT, talk));
    }

    static AddAct.Wanted wanted(String kind, String title) {
        return new AddAct.Wanted(KindsFile.shipped().named(kind), null, title, "Ada Field", LocalTime.of(14, 0));
    }

    /** A show with one act flown by a biplane, without words. */
    static Show solo() throws CannotBe {
        return done(
                empty(),
                adding(0).fromList(new ListReader(CATALOGUE).read(LIST), wanted("light aerobatic biplane", "Solo")));
    }

    static Show done(Show show, Edit edit) throws CannotBe {
        return edit.of(show).show();
    }

    static Change change(Show show, Edit edit) throws CannotBe {
        return edit.of(show);
    }

    static Act act(Show show) {
        return show.acts().get(0);
    }

    /** Names of what is flown in a variant, without transits. */
    static List<String> flown(Act act, String variant) {
        Variant v = act.variant(variant).orElseThrow();
        return act.inOrder(v).stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }

    static Figure figure(Show show, String name) {
        return act(show).figures().stream()
                .filter(f -> f.figure().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static String id(Show show, String name) {
        return figure(show, name).id();
    }

    /** The show with a person's words in every figure and transit of its first act. */
    static Show worded(Show show) {
        Act act = act(show);
        List<Figure> figures = new ArrayList<>();
        for (Figure f : act.figures()) {
            figures.add(f.withRemarks(List.of(Remark.of("r-" + f.id(), RemarkKind.FACT, "About " + f.id()))));
        }
        return show.withAct(act.withFigures(figures, act.remarks()));
    }

    static List<String> words(Show show) {
        return show.everyRemark().map(Remark::text).sorted().toList();
    }
}
