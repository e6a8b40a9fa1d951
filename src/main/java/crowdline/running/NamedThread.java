package crowdline.running;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;

/** Threads by name. None of them keeps the process: whoever owns one closes it, and waits for it as long as makes sense. */
public final class NamedThread {
    private NamedThread() {}

    /** A thread that is not started yet. */
    public static Thread of(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /** One thread that does what it is given, one after another, at once or later. */
    public static ScheduledExecutorService scheduled(String name) {
        return Executors.newSingleThreadScheduledExecutor(factory(name));
    }

    static ThreadFactory factory(String name) {
        return work -> of(name, work);
    }
}
