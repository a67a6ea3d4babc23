/* What a caller in C sees beside the figures: refusals, columns, text, the plan, threads. */
#include <pthread.h>
#include <stdio.h>
#include <string.h>
#include "zymase.h"

static int wrong;
#define CHECK(what) do { if (!(what)) { printf("line %d: %s\n", __LINE__, #what); wrong = 1; } } while (0)

static void *thread(void *n) {
  double mine = *(double *)n;
  for (int i = 0; i < 500; i++) {
    zymase_water_density_in in = zymase_water_density_inputs();
    zymase_water_density_out out;
    zymase_error error;
    in.temperature_celsius = 20;
    if (zymase_water_density(&in, &out, &error) || out.density < 998.2 || out.density > 998.21) return "figure";
    in.temperature_celsius = mine;
    if (!zymase_water_density(&in, &out, &error) || error.value != mine) return "refusal";
  }
  return NULL;
}

int main(void) {
  zymase_error error;
  zymase_water_density_in in = zymase_water_density_inputs();
  zymase_water_density_out out;
  CHECK(zymase_water_density(&in, &out, &error) == 1 && !strcmp(error.kind, "range") && !strcmp(error.quantity, "temperature"));
  in.temperature_celsius = 200;
  CHECK(zymase_water_density(&in, &out, &error) == 1 && error.value == 200 && error.min == 0 && error.max == 100);
  CHECK(!strcmp(error.unit, "°C") && !strncmp(error.source, "Bettin & Spieweck", 17) && strstr(error.message, "200 °C outside 0 °C to 100 °C"));
  CHECK(zymase_water_density(&in, &out, NULL) == 1);
  CHECK(!zymase_water_density_read_temperature("68 °F", &in, &error) && in.temperature_celsius > 19.9999 && in.temperature_celsius < 20.0001);
  CHECK(zymase_water_density_read_temperature("68", &in, &error) == 1 && !strcmp(error.kind, "text") && !strcmp(error.given, "68"));
  CHECK(zymase_call(1, 0, NULL, 0, NULL, 0, &error) == 1 && !strcmp(error.kind, "version") && strstr(error.message, "different versions"));
  CHECK(zymase_call(ZYMASE_CONTRACT, 100000, NULL, 0, NULL, 0, &error) == 1 && strstr(error.message, "no function"));
  CHECK(zymase_column(ZYMASE_CONTRACT, 0, 1, NULL, NULL, 99, NULL, 0, NULL, &error) == -1);

  double t[] = {20, -1, NAN, -1, 500, -1, 4, -1}, density[4];
  uint8_t failed[4];
  zymase_water_density_rows rows = {{t, 2}};
  zymase_water_density_columns columns = {density};
  CHECK(zymase_water_density_over(4, &rows, &columns, failed, &error) == 2);
  CHECK(!failed[0] && failed[1] && failed[2] && !failed[3] && isnan(density[1]) && isnan(density[2]) && density[3] > 999.9);
  CHECK(!strcmp(error.kind, "range") && error.value == 500);
  rows.temperature_celsius.step = 0;
  CHECK(zymase_water_density_over(4, &rows, &columns, failed, &error) == 0 && error.kind[0] == 0 && density[0] == density[3]);
  rows.temperature_celsius.step = -1;
  CHECK(zymase_water_density_over(4, &rows, &columns, failed, &error) == -1);

  zymase_co2_pressure_in p = zymase_co2_pressure_inputs();
  zymase_co2_pressure_out q;
  char caution[2000], little[20];
  p.temperature_celsius = 4;
  p.volumes_co2 = 2.5;
  CHECK(!zymase_co2_pressure(&p, &q, &error));
  CHECK(zymase_co2_pressure_say_caution(&q, caution, sizeof caution) == strlen(caution) && strstr(caution, "Vessels under pressure can burst"));
  CHECK(zymase_co2_pressure_say_caution(&q, little, sizeof little) == strlen(caution) && strlen(little) == 19);

  CHECK(zymase_plan("{}", &error) == NULL && !strcmp(error.function, "plan") && strstr(error.message, "must be given"));
  char *open = zymase_forecast_open("{\"sugar\":\"120 g/L\",\"nitrogen\":\"200 mg/L\",\"yeast\":\"0.5 g/L\",\"temperatures\":[{\"hour\":0,\"temperature\":\"20 °C\"}]}", &error);
  CHECK(open && strstr(open, "\"forecast\":1"));
  zymase_free(open);
  char *state = zymase_forecast_state("{\"forecast\":1}", &error);
  CHECK(state && strstr(state, "nitrogen"));
  zymase_free(state);
  zymase_free(zymase_forecast_close("{\"forecast\":1}", &error));
  CHECK(!zymase_forecast_state("{\"forecast\":1}", &error) && !strcmp(error.kind, "state"));
  zymase_free(NULL);

  pthread_t threads[8];
  double mine[8];
  for (int i = 0; i < 8; i++) {
    mine[i] = 1000 + i;
    CHECK(!pthread_create(&threads[i], NULL, thread, &mine[i]));
  }
  for (int i = 0; i < 8; i++) {
    void *said;
    pthread_join(threads[i], &said);
    CHECK(said == NULL);
  }
  return wrong;
}
