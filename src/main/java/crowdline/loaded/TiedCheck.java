package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.leg.Sample;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.bounds.Nearest;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Whether the moments that remarks are tied to are there to be seen in their figure, and in their order. */
final class TiedCheck {
    private final FigureFlight flown;
    private final FigureMoments moments;
    private final List<Finding> found = new ArrayList<>();

    private TiedCheck(FigureFlight flown, FigureMoments moments) {
        this.flown = flown;
        this.moments = moments;
    }

    /**
     * What there is to say of the remarks of one figure.
     *
     * @param samples of the whole flight
     * @param path of the figure in the show
     */
    static List<Finding> of(Figure figure, FigureFlight flown, List<Sample> samples, String path) {
        TiedCheck check = new TiedCheck(flown, FigureMoments.of(flown, samples));
        for (int r = 0; r < figure.remarks().size(); r++) {
            if (figure.remarks().get(r).isTied()) {
                check.remark(figure.remarks().get(r), path + ".remarks[" + r + "]");
            }
        }
        return check.found;
    }

    private void remark(Remark remark, String path) {
        Double at = when(remark.at(), "at", path);
        Double until = when(remark.until(), "until", path);
        MomentName first = remark.at();
        MomentName last = remark.until();
        if (at == null || until == null || first == null || last == null) {
            return;
        }
        double earliestS = remark.earliestS() == null ? 0 : remark.earliestS();
        double latestS = remark.latestS() == null ? 0 : remark.latestS();
        if (until + latestS <= at + earliestS) {
            add(
                    "moments-out-of-order",
                    path + ".until",
                    "the until is \"%s\", at %.1f s; it must come after \"%s\", at %.1f s",
                    last.words(),
                    until + latestS,
                    first.words(),
                    at + earliestS);
        }
    }

    private @Nullable Double when(@Nullable MomentName name, String key, String path) {
        if (name == null) {
            return null;
        }
        Double when = moments.find(name).map(Moment::afterS).orElse(null);
        if (when == null) {
            List<String> there =
                    moments.moments().stream().map(m -> m.name().words()).toList();
            add(
                    "moment-not-there",
                    path + "." + key,
                    "the %s is \"%s\"; the moments of \"%s\" are %s%s. Until that is put right the remark goes by the rule"
                            + " of its kind",
                    key,
                    name.words(),
                    flown.name(),
                    String.join(", ", there),
                    Nearest.hint(name.words(), there));
        }
        return when;
    }

    private void add(String code, String path, String what, Object... values) {
        found.add(new Finding(Severity.WARNING, code, String.format(Locale.UK, what, values), path));
    }
}
