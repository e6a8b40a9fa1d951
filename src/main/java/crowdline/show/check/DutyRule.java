package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Quantity;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What is asked of a duty of the day can be done: it names acts of the show, and there is time to say it so often. */
final class DutyRule implements ShowRule {
    private static final int LONGEST_NAME = 40;

    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int r = 0; r < show.remarks().size(); r++) {
            Remark remark = show.remarks().get(r);
            DutyTimes duty = remark.duty();
            String path = "remarks[" + r + "].duty";
            if (duty == null) {
                continue;
            }
            if (remark.kind() != RemarkKind.DUTY) {
                meaningless(remark, "is no duty", path, findings);
                continue;
            }
            boolean knownAfter = known(show, remark, duty.afterAct(), path + ".afterAct", findings);
            boolean knownBefore = known(show, remark, duty.beforeAct(), path + ".beforeAct", findings);
            often(remark, duty, path, findings);
            if (knownAfter && knownBefore) {
                fits(show, remark, duty, path, findings);
            }
        }
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            ofAnAct(act.remarks(), At.act(a), findings);
            for (int f = 0; f < act.figures().size(); f++) {
                ofAnAct(act.figures().get(f).remarks(), At.figure(a, f), findings);
            }
        }
    }

    private static void ofAnAct(List<Remark> remarks, String path, Consumer<Finding> findings) {
        for (int r = 0; r < remarks.size(); r++) {
            if (remarks.get(r).duty() != null) {
                meaningless(
                        remarks.get(r),
                        "belongs to an act, not to the day",
                        path + ".remarks[" + r + "].duty",
                        findings);
            }
        }
    }

    private static void meaningless(Remark remark, String why, String path, Consumer<Finding> findings) {
        findings.accept(new Finding(
                Severity.NOTE,
                "duty-without-meaning",
                "the remark " + Written.quoted(remark.id()) + " " + why
                        + ", so how often it is to be said means nothing; only a duty among the remarks of the show is said"
                        + " so often a day",
                path));
    }

    private static boolean known(
            Show show, Remark remark, @Nullable String actId, String path, Consumer<Finding> findings) {
        if (actId == null || show.act(actId).isPresent()) {
            return true;
        }
        String near = Nearest.hint(actId, show.acts().stream().map(Act::id).toList());
        findings.accept(new Finding(
                Severity.WARNING,
                "duty-names-no-act",
                "the duty " + named(remark) + " names the act " + Written.quoted(actId)
                        + ", which the show does not have, so Live takes no notice of it"
                        + (near.isEmpty() ? "; name one that is there" : near),
                path));
        return false;
    }

    private static void often(Remark remark, DutyTimes duty, String path, Consumer<Finding> findings) {
        if (!Quantity.DUTY_TIMES.isPlausible(duty.times())) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "duty-very-often",
                    "the duty " + named(remark) + " is asked for " + duty.times()
                            + " times a day; check that this is meant",
                    path + ".times"));
        }
    }

    /** From the first slot to the last, or to the hour or the act that it must come before. */
    private static void fits(Show show, Remark remark, DutyTimes duty, String path, Consumer<Finding> findings) {
        if (show.acts().isEmpty()) {
            return;
        }
        Act after = duty.afterAct() == null ? null : show.act(duty.afterAct()).orElse(null);
        Act before =
                duty.beforeAct() == null ? null : show.act(duty.beforeAct()).orElse(null);
        LocalDateTime from = after == null ? show.slotStart(show.acts().get(0)) : end(show, after);
        LocalDateTime to =
                before == null ? end(show, show.acts().get(show.acts().size() - 1)) : show.slotStart(before);
        LocalDateTime by = duty.by() == null ? null : show.onTheDay(duty.by());
        to = by != null && by.isBefore(to) ? by : to;
        double thereMinutes = Duration.between(from, to).toSeconds() / 60.0;
        double neededMinutes = (duty.times() - 1) * duty.apartS() / 60;
        boolean backwards = after != null && thereMinutes < 0;
        if (backwards || (duty.times() > 1 && neededMinutes > thereMinutes)) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "duty-does-not-fit",
                    "the duty " + named(remark)
                            + (backwards
                                    ? " is to be said before its time begins; change afterAct, beforeAct or by"
                                    : String.format(
                                            Locale.UK,
                                            " is asked for %d times, %.0f minutes apart, but there are only %.0f"
                                                    + " minutes for it; ask for it less often, or closer together",
                                            duty.times(),
                                            duty.apartS() / 60,
                                            Math.max(0, thereMinutes))),
                    path));
        }
    }

    /** By its words: nobody who typed them in a window has seen its id. */
    private static String named(Remark duty) {
        return duty.text().isBlank()
                ? Written.quoted(duty.id())
                : Written.quoted(Written.brief(duty.text(), LONGEST_NAME));
    }

    private static LocalDateTime end(Show show, Act act) {
        return show.slotStart(act).plusSeconds(Math.round(act.slotMinutes() * 60));
    }
}
