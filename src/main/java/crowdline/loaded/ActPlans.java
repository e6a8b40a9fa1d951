package crowdline.loaded;

import crowdline.patter.Margins;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Plans whole acts on paper, one after the other: what one act says once is not planned in a later one. */
public final class ActPlans {
    private ActPlans() {}

    /** One act with what is planned to be said in it. */
    public record Planned(Act act, Variant variant, PlanRequest request, Plan plan) {
        public Margins margins() {
            return new Margins(request, plan);
        }
    }

    /** The plans of those acts that can be predicted. */
    public static List<Planned> of(LoadedShow loaded, List<Act> acts, Function<Act, Variant> chosen) {
        return of(loaded, acts, chosen, new Planner()::plan);
    }

    /**
     * The same.
     *
     * @param planner answers a question as a planner would, such as one who remembers what was answered before
     */
    public static List<Planned> of(
            LoadedShow loaded, List<Act> acts, Function<Act, Variant> chosen, Function<PlanRequest, Plan> planner) {
        List<Planned> all = new ArrayList<>();
        Set<String> saidOnce = new HashSet<>();
        for (Act act : acts) {
            Variant variant = chosen.apply(act);
            loaded.prediction(act.id(), variant.name()).ifPresent(prediction -> {
                PlanRequest whole = loaded.planAhead().wholeAct(act, prediction.times());
                PlanRequest request = new PlanRequest(
                        whole.nowS(),
                        whole.slots(),
                        whole.candidates(),
                        saidOnce,
                        whole.previous(),
                        null,
                        whole.rules());
                Plan plan = planner.apply(request);
                all.add(new Planned(act, variant, request, plan));
                loaded.show().remarks().stream()
                        .filter(Remark::once)
                        .map(Remark::id)
                        .filter(id -> plan.find(id).isPresent())
                        .forEach(saidOnce::add);
            });
        }
        return all;
    }
}
