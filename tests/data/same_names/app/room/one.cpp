namespace {

int same(int x) { return x > 0; }

}  // namespace
