using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class HowFabricsArePrinted : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Direction",
                table: "Fabrics",
                type: "TEXT",
                maxLength: 100,
                nullable: false,
                defaultValue: "Any");

            migrationBuilder.AddColumn<long>(
                name: "PanelTicks",
                table: "Fabrics",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "RepeatAcrossTicks",
                table: "Fabrics",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "RepeatAlongTicks",
                table: "Fabrics",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "TwoSided",
                table: "Fabrics",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Direction",
                table: "Fabrics");

            migrationBuilder.DropColumn(
                name: "PanelTicks",
                table: "Fabrics");

            migrationBuilder.DropColumn(
                name: "RepeatAcrossTicks",
                table: "Fabrics");

            migrationBuilder.DropColumn(
                name: "RepeatAlongTicks",
                table: "Fabrics");

            migrationBuilder.DropColumn(
                name: "TwoSided",
                table: "Fabrics");
        }
    }
}
