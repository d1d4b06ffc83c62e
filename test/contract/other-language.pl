# A client in another language, made from the contract by a general library as it runs: asks for an estimate, a drawing
# of it and its report, and says as JSON what came back.
use strict;
use warnings;
use Mojo::File 'path';
use Mojo::JSON qw(decode_json encode_json);
use OpenAPI::Client;

my ($contract, $address, $key, $record) = @ARGV;
# The library would take a number for a text as well, and a length is the one or the other.
my $client = OpenAPI::Client->new("file://$contract", coerce => "booleans");
$client->base_url(Mojo::URL->new($address));
my $accept = 'application/json';
$client->ua->inactivity_timeout(120)->request_timeout(120);
$client->ua->on(
  start => sub {
    my ($ua, $tx) = @_;
    $tx->req->headers->authorization("Bearer $key")->accept($accept);
  }
);

my @told;

sub ask {
  my ($operation, $given, $type) = @_;
  $accept = $type;
  my $result = $client->call($operation, $given)->res;
  push @told,
    {
    operation => $operation,
    status    => $result->code + 0,
    type      => $result->headers->content_type,
    begins    => substr($result->body, 0, 5),
    bytes     => length $result->body,
    fault     => $result->code < 300 ? undef : $result->body,
    };
  return $result;
}

my $made = ask('createEstimate', {body => decode_json(path($record)->slurp)}, 'application/json')->json;
my $id   = $made->{id};
ask('getEstimate', {id => $id}, 'application/json');
my $drawings = ask('listDrawings', {id => $id}, 'application/json')->json;
ask('getDrawing', {id => $id, name => $drawings->{items}[0]{name}}, 'image/svg+xml');
ask("getEstimate", {id => $id}, "application/pdf");
ask('getEstimate', {id => 'no such id'}, 'application/json');
print encode_json(\@told);
