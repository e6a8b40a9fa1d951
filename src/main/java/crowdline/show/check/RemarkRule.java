package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** There is something to say: a call for each figure, something for each act, the duties of the day. */
final class RemarkRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            for (int f = 0; f < act.figures().size(); f++) {
                Figure figure = act.figures().get(f);
                figure(figure, catalogue, At.figure(a, f), findings);
            }
            if (act.remarks().isEmpty()
                    && act.figures().stream().allMatch(f -> f.remarks().isEmpty())) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "act-without-remarks",
                        Written.quoted(act.title()) + " has no remarks at all, so there is nothing to say in it",
                        At.act(a)));
            }
            timed(act.remarks(), At.act(a) + ".remarks", findings);
        }
        timed(show.remarks(), "remarks", findings);
        if (show.everyRemark().noneMatch(r -> r.kind() == RemarkKind.DUTY)) {
            findings.accept(new Finding(
                    Severity.NOTE,
                    "no-duties",
                    "no remark is a duty; if somebody must be thanked or told something today, mark that remark as one",
                    "remarks"));
        }
    }

    private static void figure(Figure figure, Catalogue catalogue, String path, Consumer<Finding> findings) {
        for (int r = 0; r < figure.remarks().size(); r++) {
            Remark remark = figure.remarks().get(r);
            if (remark.kind() == RemarkKind.CALL && (remark.at() != null || remark.until() != null)) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "call-with-moment",
                        "the remark " + Written.quoted(remark.id())
                                + " is a call, which comes before its figure, so its at and until mean nothing",
                        path + ".remarks[" + r + "]"));
            }
        }
        if (figure.transit()) {
            return;
        }
        String name = catalogue.nameOf(figure);
        boolean needsNoCall = catalogue
                .find(figure.figure())
                .filter(entry -> entry.isOnTheWay() || entry.comesOrGoes())
                .isPresent();
        if (figure.remarks().isEmpty()) {
            findings.accept(new Finding(
                    Severity.NOTE,
                    "figure-without-remarks",
                    begun(name) + " has no remarks; Live has only the catalogue's sentence for it",
                    path));
        } else if (!needsNoCall && figure.remarks().stream().noneMatch(r -> names(r, name))) {
            findings.accept(
                    new Finding(Severity.NOTE, "figure-without-call", begun(name) + " has no call", path + ".remarks"));
        }
    }

    /** A call does; and so does what is said as the figure begins, where something else had to be watched before it. */
    private static boolean names(Remark remark, String figure) {
        return remark.kind() == RemarkKind.CALL
                || remark.text().toLowerCase(Locale.ROOT).contains(figure.toLowerCase(Locale.ROOT));
    }

    /** In quotes, as it begins a sentence. */
    private static String begun(String name) {
        return Written.quoted(name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1));
    }

    private static void timed(List<Remark> remarks, String path, Consumer<Finding> findings) {
        for (int r = 0; r < remarks.size(); r++) {
            Remark remark = remarks.get(r);
            if (remark.earliestS() != null
                    || remark.latestS() != null
                    || remark.at() != null
                    || remark.until() != null) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "time-without-figure",
                        "the remark " + Written.quoted(remark.id())
                                + " belongs to no figure, so its at, until, earliestS and latestS mean nothing",
                        path + "[" + r + "]"));
            }
        }
    }
}
