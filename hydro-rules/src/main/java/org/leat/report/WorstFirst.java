package org.leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** The first few of many by some order, and how many there were. Holds no more than it is asked to show. */
final class WorstFirst<T> {

    private final int most;
    private final Comparator<? super T> order;
    private final PriorityQueue<T> kept;
    private int seen;

    WorstFirst(int most, Comparator<? super T> worstFirst) {
        this.most = most;
        this.order = worstFirst;
        this.kept = new PriorityQueue<>(worstFirst.reversed());
    }

    void add(T item) {
        seen++;
        kept.add(item);
        if (kept.size() > most) {
            kept.poll();
        }
    }

    int seen() {
        return seen;
    }

    boolean isEmpty() {
        return seen == 0;
    }

    List<T> worstFirst() {
        List<T> sorted = new ArrayList<>(kept);
        sorted.sort(order);
        return sorted;
    }
}
