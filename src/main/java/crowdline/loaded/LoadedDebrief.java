package crowdline.loaded;

import crowdline.live.debrief.DebriefSources;
import crowdline.patter.Plan;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * What a debrief compares a show with.
 *
 * @param begun when the session began: a pass of its own does not tell what was planned for it
 * @param kept the passes of an act and variant
 */
record LoadedDebrief(LoadedShow loaded, ShowLookup words, Instant begun, BiFunction<String, String, List<Pass>> kept)
        implements DebriefSources {
    @Override
    public Optional<ActTimes> times(String actId, String variant) {
        return loaded.prediction(actId, variant).map(p -> p.timesBefore(begun));
    }

    @Override
    public Optional<Plan> plan(String actId, String variant) {
        return loaded.show().act(actId).flatMap(act -> times(actId, variant).map(times -> loaded.plan(act, times)));
    }

    @Override
    public String name(String actId, String variant, String figureId) {
        return words.name(loaded.show().act(actId).orElse(null), variant, figureId);
    }

    @Override
    public double spokenS(String text) {
        return words.time(Remark.of("said", RemarkKind.FACT, text), false).seconds();
    }

    @Override
    public List<Pass> passes(String actId, String variant) {
        return kept.apply(actId, variant);
    }
}
