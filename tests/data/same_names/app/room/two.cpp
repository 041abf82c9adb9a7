namespace {

int same(double x) { return x > 0; }

}  // namespace
