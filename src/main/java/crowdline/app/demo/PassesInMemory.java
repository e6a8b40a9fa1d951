package crowdline.app.demo;

import crowdline.console.walk.Passes;
import crowdline.timing.Pass;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Passes kept as long as the program runs. */
final class PassesInMemory implements Passes {
    private final List<Pass> passes = new CopyOnWriteArrayList<>();

    @Override
    public List<Pass> of(String actId, String variant) {
        return passes.stream()
                .filter(p -> p.actId().equals(actId) && p.variant().equals(variant))
                .toList();
    }

    @Override
    public void add(Pass pass) {
        passes.removeIf(p -> p.id().equals(pass.id()));
        passes.add(pass);
    }
}
