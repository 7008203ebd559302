/*
 * The same transient as the Java benchmark, as a plain loop: one pipe, tank upstream, nozzle closing
 * linearly downstream, steady friction, head envelope kept at every node. Prints microseconds a run and a
 * checksum. Build: cc -O3 -o characteristics characteristics.c -lm
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double run(int reaches, int steps, double length, double bore, double a, double f, double tank, double q0,
                  double closing, double *h, double *q, double *hn, double *qn, double *top, double *low) {
    const double g = 9.80665;
    double area = M_PI / 4 * bore * bore;
    double dx = length / reaches, dt = dx / a;
    double b = a / (g * area), r = f * dx / (2 * g * bore * area * area);
    double h0 = tank - r * reaches * q0 * q0;
    for (int i = 0; i <= reaches; i++) {
        h[i] = tank - r * i * q0 * q0;
        q[i] = q0;
        top[i] = low[i] = h[i];
    }
    for (int s = 1; s <= steps; s++) {
        double t = s * dt;
        double tau = t >= closing ? 0 : 1 - t / closing;
        hn[0] = tank;
        qn[0] = (tank - (h[1] - b * q[1] + r * q[1] * fabs(q[1]))) / b;
        for (int i = 1; i < reaches; i++) {
            double cp = h[i - 1] + b * q[i - 1] - r * q[i - 1] * fabs(q[i - 1]);
            double cm = h[i + 1] - b * q[i + 1] + r * q[i + 1] * fabs(q[i + 1]);
            hn[i] = 0.5 * (cp + cm);
            qn[i] = (cp - cm) / (2 * b);
        }
        double cp = h[reaches - 1] + b * q[reaches - 1] - r * q[reaches - 1] * fabs(q[reaches - 1]);
        double k = tau * q0 / sqrt(h0);
        if (cp < 0) {
            hn[reaches] = 0;
            qn[reaches] = cp / b;
        } else {
            double root = (-b * k + sqrt(b * b * k * k + 4 * cp)) / 2;
            hn[reaches] = root * root;
            qn[reaches] = k * root;
        }
        double *swap = h; h = hn; hn = swap;
        swap = q; q = qn; qn = swap;
        for (int i = 0; i <= reaches; i++) {
            if (h[i] > top[i]) top[i] = h[i];
            if (h[i] < low[i]) low[i] = h[i];
        }
    }
    return top[reaches] + low[reaches / 2];
}

int main(int argc, char **argv) {
    int reaches = 200, steps = 2000;
    int rounds = argc > 1 ? atoi(argv[1]) : 500;
    double *m = calloc((size_t) 6 * (reaches + 1), sizeof(double));
    double *p[6];
    for (int i = 0; i < 6; i++) p[i] = m + (size_t) i * (reaches + 1);
    double sum = 0;
    struct timespec a, b;
    for (int pass = 0; pass < 2; pass++) { /* the first pass warms up */
        clock_gettime(CLOCK_MONOTONIC, &a);
        for (int i = 0; i < rounds; i++) {
            sum += run(reaches, steps, 240, 0.0971, 400, 0.019, 55, 0.005 + 1e-9 * i, 1.5, p[0], p[1], p[2], p[3], p[4], p[5]);
        }
        clock_gettime(CLOCK_MONOTONIC, &b);
    }
    double us = ((b.tv_sec - a.tv_sec) * 1e9 + (b.tv_nsec - a.tv_nsec)) / 1e3 / rounds;
    printf("%.2f us a run, checksum %.9g\n", us, sum / (2 * rounds));
    free(m);
    return 0;
}
